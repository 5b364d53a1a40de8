/** What has a dial on a plant: read as it stands, and set. */
import type { Unit } from '../quantity/index.ts';
import { controlDials } from './control-dials.ts';
import type { Dial } from './dial.ts';
import { fieldDials } from './field-dials.ts';
import type { FaultSubject } from './subject.ts';

export interface Setting {
  readonly part: string;
  /** In the words of the trade; unique on its part. */
  readonly setting: string;
  readonly unit: Unit;
  /** What the dial reaches, whatever the plant is set to. */
  readonly min: number;
  readonly max: number;
  readonly value: number;
}

/** Every dial of these parameters; of the same plant always the same, but for the values. */
export function settingsOf(subject: FaultSubject): readonly Setting[] {
  return dialsOf(subject).map(({ part, setting, unit, min, max, read }) => ({
    part,
    setting,
    unit,
    min,
    max,
    value: read(),
  }));
}

/** Turns a dial as far as it goes towards the value. False where the plant has no such dial. */
export function writeSetting(
  sound: FaultSubject,
  part: string,
  setting: string,
  value: number,
): boolean {
  const dial = dialsOf(sound).find((one) => one.part === part && one.setting === setting);
  if (dial === undefined || !Number.isFinite(value)) return false;
  dial.write(Math.min(dial.max, Math.max(dial.min, value)));
  return true;
}

function dialsOf(subject: FaultSubject): readonly Dial[] {
  const dials = new Map<string, Dial>();
  for (const dial of [...fieldDials(subject), ...controlDials(subject)]) {
    const name = `${dial.part}\n${dial.setting}`;
    // Of two switches on one terminal the first has the dial.
    if (!dials.has(name)) dials.set(name, dial);
  }
  return [...dials.values()];
}
