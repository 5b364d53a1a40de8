import { checkOfWhat, toolOf } from '../../bench/index.ts';
import { say, sayMessage, sayWord } from '../../i18n/index.ts';
import { partsOf } from '../../wording/index.ts';

/** What is to be heeded where a check is proposed that can hurt someone; null where none can. */
export function cautionOf(check: string): string | null {
  const own = ownCaution(check);
  return own === null ? null : `${own} ${say('guide.caution')}`;
}

function ownCaution(check: string): string | null {
  const { what, place } = partsOf(check);
  if (what === 'continuity') return say('guide.caution.isolated');
  const tool = toolOf(what === 'volts' ? 'multimeter' : what);
  if (tool !== null) return tool.caution === null ? null : sayMessage(tool.caution);
  const risk = checkOfWhat(what, place)?.risk ?? 'none';
  return risk === 'none' ? null : sayWord('guide.caution', risk);
}
