import type { ClassTo } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';

/** Whom something was meant for. */
export function toText(to: ClassTo): string {
  return to === 'all' ? say('teach-class.to.all') : say('teach-class.seat', { seat: to.seat });
}
