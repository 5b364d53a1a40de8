/** What a technician's remedy is as an act on a run. */
import { type Action, type Run, settingsOf } from '../../src/engine/index.ts';
import type { Remedy } from '../../src/faults/index.ts';

/** `cock` is the first cock of every shipped plant. */
export function actFor(run: Run, { part, way, setting }: Remedy): Action {
  switch (way) {
    case 'adjust':
      return {
        type: 'adjust',
        part,
        setting: setting ?? '',
        value: sheetValue(run, part, setting),
      };
    case 'turn-cock':
      return { type: 'turn-cock', cock: 'cock', opening: 1 };
    case 'reset-limits':
      return { type: 'reset-limits', pressed: true };
    case 'firing':
      return { type: 'firing', mode: 'automatic', rate: 0 };
    default:
      return { type: 'repair', part, way };
  }
}

/** As the commissioning sheet has it: what the plant file says of the dial. */
export function sheetValue(run: Run, part: string, setting = ''): number {
  const sound = settingsOf(run.setup.plant);
  const dial = sound.find((one) => one.part === part && one.setting === setting);
  if (dial === undefined) throw new Error(`no ${setting} on ${part}`);
  return dial.value;
}

/** A deliberate reset: a press and a release. */
export function pressReset(run: Run): void {
  run.act({ type: 'reset', pressed: true });
  run.advanceTo(run.timeS() + 1);
  run.act({ type: 'reset', pressed: false });
  run.advanceTo(run.timeS() + 1);
}

export function lastOf(run: Run, channel: string): number {
  const k = run.channels.findIndex(({ id }) => id === channel);
  if (k < 0) throw new Error(`no channel ${channel}`);
  return run.frame(run.frameCount() - 1)[k] as number;
}
