import { describe, expect, it } from 'vitest';
import { CAUSES, INPUTS, type InputName, type Variant } from '../../machines/index.ts';
import { BAKERY, DAIRY, LAUNDRY, SCHOOL, timingsOf } from './practice.ts';
import { createRig, type Rig } from './rig.ts';

/**
 * A plant that gives whatever is waited for, but for one input that is stuck: started, run for a
 * day, its call for heat taken away, run for another day.
 */
const timings = timingsOf('north-american-packaged-boiler');
const DAY_MS = 86_400_000;

function runFor(rig: Rig, ms: number): void {
  const untilMs = rig.clock.nowMs + ms;
  while (rig.clock.nowMs < untilMs) {
    const { phase } = rig.burner;
    rig.oblige();
    if (rig.burner.phase !== phase) continue;
    rig.pass((Math.min(rig.clock.nextDueMs, untilMs) - rig.clock.nowMs) / 1000);
  }
}
function endsOf(variant: Variant, input: InputName, value: boolean): readonly [string, string] {
  const stuck = { [input]: value };
  const rig = createRig(variant, timings, { stuck });
  rig.give({ callForHeat: true });
  runFor(rig, DAY_MS);
  const calling = rig.outcome();
  rig.give({ callForHeat: false });
  // Standby waits for a call for heat, which an obliging plant must not give here.
  for (
    let moves = 0;
    moves < 100 && rig.step() !== 'standby' && rig.step() !== 'lockout';
    moves++
  ) {
    const { phase } = rig.burner;
    if (rig.step() !== 'modulation') rig.oblige();
    if (rig.burner.phase !== phase) continue;
    if (rig.clock.nextDueMs === Number.POSITIVE_INFINITY) break;
    rig.pass((rig.clock.nextDueMs - rig.clock.nowMs) / 1000);
  }
  return [calling, rig.outcome()];
}

const SOUND = ['modulation', 'standby'] as const;
function lockedOut(cause: string): readonly [string, string] {
  return [cause, cause];
}

/** Where a plant like the dairy ends, for the inputs whose sticking is not harmless. */
const DAIRY_ENDS: { readonly [stuck: string]: readonly [string, string] } = {
  'callForHeat at 0': ['standby', 'standby'],
  'callForHeat at 1': ['modulation', 'modulation'],
  'emergencyStopClear at 0': lockedOut('emergency stop'),
  'supplyInBand at 0': lockedOut('supply out of band'),
  'controlFuseMade at 0': lockedOut('control fuse open'),
  'safetyRelayFeedback at 0': lockedOut('safety relay did not follow'),
  'safetyRelayFeedback at 1': lockedOut('safety relay did not follow'),
  'waterAboveFirst at 0': lockedOut('water low'),
  'waterAboveSecond at 0': lockedOut('water very low'),
  'highLimitMade at 0': lockedOut('high limit open'),
  'furnacePressureInBand at 0': lockedOut('furnace pressure high'),
  'gasPressureAboveLow at 0': lockedOut('gas pressure low'),
  'gasPressureBelowHigh at 0': lockedOut('gas pressure high'),
  'airProved at 0': lockedOut('airflow not proved'),
  'airProved at 1': lockedOut('air proved with fan at rest'),
  'flame at 0': lockedOut('pilot not lit'),
  'flame at 1': lockedOut('flame seen at rest'),
  'upstreamValveClosed at 0': lockedOut('valve not proved closed'),
  'downstreamValveClosed at 0': lockedOut('valve not proved closed'),
  'interspaceEmpty at 0': lockedOut('interspace did not empty'),
  'interspaceFull at 0': lockedOut('interspace did not fill'),
  'damperAtPurge at 0': lockedOut('purge position not proved'),
  'fanAtPurgeSpeed at 0': lockedOut('purge speed not proved'),
  'damperAtLightOff at 0': lockedOut('light-off position not proved'),
  'fanAtLightOffSpeed at 0': lockedOut('light-off position not proved'),
  'fuelValveAtLightOff at 0': lockedOut('light-off position not proved'),
  'airChangesCounted at 0': lockedOut('airflow not proved'),
  'positionsOnCurve at 0': lockedOut('position left its curve'),
  'speedOnCurve at 0': lockedOut('speed left its curve'),
  'warmUpSatisfied at 0': lockedOut('warm-up not satisfied'),
};
const CASES = INPUTS.flatMap((input) => [
  { input, value: false },
  { input, value: true },
]);

describe('[IN-7] one input stuck, all else obliging', () => {
  it.each(CASES)('dairy, $input at $value', ({ input, value }) => {
    const expected = DAIRY_ENDS[`${input} at ${Number(value)}`] ?? SOUND;
    expect(endsOf(DAIRY, input, value)).toEqual(expected);
  });
  it.each([
    ['laundry', LAUNDRY],
    ['school', SCHOOL],
    ['bakery', BAKERY],
  ])('%s ends in standby, modulation or lockout whichever is stuck', (_name, variant) => {
    const places: readonly string[] = ['standby', 'modulation', ...CAUSES];
    for (const { input, value } of CASES) {
      const ends = endsOf(variant, input, value);
      expect([input, value, ends.filter((end) => !places.includes(end))]).toEqual([
        input,
        value,
        [],
      ]);
    }
  });
});
