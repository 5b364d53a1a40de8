import { isMessage, say, slugOf } from '../../i18n/index.ts';
import type { Job } from '../library/exercises.ts';

type Mend = NonNullable<Job['userError']>['mend'][number];

/** What puts a plant right that was only used wrongly, one act as a line. */
export function mendWords(act: Mend): string {
  const code = `debrief.mend.${act.do}${sideOf(act)}`;
  if (!isMessage(code)) return slugOf(act.do).replace(/-/g, ' ');
  return say(code, {
    ...('mode' in act ? { mode: act.mode } : {}),
    ...('opening' in act ? { percent: Math.round(act.opening * 100) } : {}),
    ...('part' in act ? { part: act.part } : {}),
    ...('setting' in act ? { setting: act.setting } : {}),
  });
}

function sideOf(act: Mend): string {
  if ('pressed' in act) return act.pressed ? '-in' : '-out';
  if ('on' in act) return act.on ? '-on' : '-off';
  return '';
}
