import { checkOfWhat, toolOf } from '../../../bench/index.ts';
import { partsOfCheck } from '../../../diagnosis/index.ts';
import type { Statement } from '../../item/statement.ts';

/** What is to be heeded where one of these checks can hurt someone; that of the first that can. */
export function cautionOfCheck(checks: readonly string[]): Statement | null {
  for (const check of checks) {
    const code = codeOf(check);
    if (code === null) continue;
    const own = { is: 'statement', statement: { code } } as const;
    return { code: 'quiz.reading.caution', with: { own } };
  }
  return null;
}

function codeOf(check: string): string | null {
  const { what, place } = partsOfCheck(check);
  if (what === 'continuity') return 'guide.caution.isolated';
  const tool = toolOf(what === 'volts' ? 'multimeter' : what);
  if (tool !== null) return tool.caution?.code ?? null;
  const risk = checkOfWhat(what, place)?.risk ?? 'none';
  return risk === 'none' ? null : `guide.caution.${risk.replaceAll(' ', '-')}`;
}
