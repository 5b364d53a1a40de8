import { STEPS, type StepName } from '../../../machines/index.ts';
import { FRAME_S, type Run } from '../../engine/index.ts';
import { isFiring, momentOf, type Reader, read } from './read-moment.ts';
import type { LeakCheck, Moment, Span } from './trace-types.ts';

/** Without this behind it a joint cannot show a leak, Pa: as the leak spray of the bag has it. */
export const LEAK_TEST_PA = 500;
/** A joint stays wet for so long, s. */
export const WET_S = 180;
const LIGHT_OFF_STEPS: ReadonlySet<StepName> = new Set([
  'spark check',
  'pilot trial',
  'main trial',
]);

interface WetJoint {
  readonly place: string;
  readonly t: number;
  underPressureS: number | null;
}
interface OpenSpan {
  readonly fromS: number;
  toS: number;
}

/** What is kept while the run goes by at ten frames a second. */
export interface Watch {
  readonly wet: WetJoint[];
  readonly pressed: Map<string, OpenSpan[]>;
  readonly firings: (OpenSpan & { readonly at: Moment })[];
  readonly lightOffs: Moment[];
  step: StepName | null;
}

export function createWatch(): Watch {
  return { wet: [], pressed: new Map(), firings: [], lightOffs: [], step: null };
}

/** Takes the newest frame. */
export function watchFrame(watch: Watch, run: Run, reader: Reader): void {
  const frame = run.frame(run.frameCount() - 1);
  const t = run.timeS();
  for (const [node, place] of reader.gas) {
    if ((frame[place] as number) < LEAK_TEST_PA) continue;
    extend(spansOf(watch.pressed, node), t);
  }
  for (const joint of watch.wet) {
    if (joint.underPressureS !== null || t > joint.t + WET_S) continue;
    const place = reader.gasPlace.get(joint.place);
    if (place !== undefined && (frame[place] as number) >= LEAK_TEST_PA) joint.underPressureS = t;
  }
  const step = STEPS[read(frame, reader.step)] as StepName;
  if (step !== watch.step && LIGHT_OFF_STEPS.has(step)) {
    watch.lightOffs.push(momentOf(run, reader));
  }
  watch.step = step;
  if (!isFiring(read(frame, reader.commands))) return;
  const last = watch.firings.at(-1);
  if (last !== undefined && t - last.toS < 1.5 * FRAME_S) last.toS = t;
  else watch.firings.push({ fromS: t, toS: t, at: momentOf(run, reader) });
}

export function leakChecksOf(watch: Watch): LeakCheck[] {
  return watch.wet.map((joint) => ({ ...joint }));
}
export function pressedOf(watch: Watch): Record<string, readonly Span[]> {
  return Object.fromEntries(watch.pressed);
}

function spansOf(pressed: Map<string, OpenSpan[]>, node: string): OpenSpan[] {
  const spans = pressed.get(node) ?? [];
  pressed.set(node, spans);
  return spans;
}

function extend(spans: OpenSpan[], t: number): void {
  const last = spans.at(-1);
  if (last !== undefined && t - last.toS < 1.5 * FRAME_S) last.toS = t;
  else spans.push({ fromS: t, toS: t });
}
