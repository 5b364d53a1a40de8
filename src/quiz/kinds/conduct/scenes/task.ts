import type { RepairWay } from '../../../../engine/index.ts';
import type { Statement, Term } from '../../../item/statement.ts';

/** What is to be done to a part. */
export function jobOn(part: string, way: RepairWay): Statement {
  return {
    code: 'quiz.conduct.tells.job',
    with: { part, way: { is: 'word', of: 'quiz.conduct.way', word: way } },
  };
}

/** What is to be found out about a device. */
export function about(code: string, device: Term): Statement {
  return { code: `quiz.conduct.tells.${code}`, with: { device } };
}
