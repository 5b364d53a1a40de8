import { toolFor } from '../atlas/question-cost.ts';

/** Whether a check can be made with what may be taken along. */
export function isPermitted(check: string, tools: readonly string[] | 'all'): boolean {
  const tool = toolFor(check);
  return tool === null || tools === 'all' || tools.includes(tool);
}
