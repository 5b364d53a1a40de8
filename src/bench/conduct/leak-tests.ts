import { jointsOf } from './gas-places.ts';
import type { JobTrace } from './trace-types.ts';

export interface LeakTest {
  /** Joints not seen tight under pressure since the part was opened. */
  readonly untested: readonly string[];
  /** When the last of the joints was tested; null while one is missing. */
  readonly t: number | null;
}

/**
 * Whether every joint that opening a part undid has been sprayed, or watched for decay, with pressure
 * behind it, after `openedS` and until `untilS`. A part on no node asks for any joint at all.
 */
export function leakTestOf(
  trace: JobTrace,
  part: string,
  openedS: number,
  untilS: number,
): LeakTest {
  const joints = jointsOf(trace.plant, part);
  const testedS = (node: string | null) =>
    trace.leakChecks.find(
      ({ place, t, underPressureS }) =>
        t >= openedS &&
        underPressureS !== null &&
        underPressureS <= untilS &&
        (node === null || place === node),
    )?.underPressureS ?? null;
  const wanted: readonly (string | null)[] = joints.length > 0 ? joints : [null];
  const times = wanted.map(testedS);
  return {
    untested: wanted.flatMap((node, place) => (times[place] === null ? [node ?? part] : [])),
    t: times.includes(null) ? null : Math.max(...times.map((t) => t ?? 0)),
  };
}
