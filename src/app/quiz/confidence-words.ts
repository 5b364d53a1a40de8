import { say } from '../../i18n/index.ts';
import type { Confidence } from '../../quiz/index.ts';

/** The word of how sure someone is, as in 'Fairly sure'. */
export function confidenceWord(confidence: Confidence): string {
  return say(`quiz.sure.${confidence}`);
}
