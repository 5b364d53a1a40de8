import type { LadderElement, LadderWiring } from '../../../src/view/index.ts';

/** A small plant's wiring: a series string with taps, relays, a loop, a feedback track. */
const RUNGS: readonly (readonly string[])[] = [
  ['L', 'isolator', 'L0', 'control-fuse', 'L1'],
  ['L0', 'in.supplyInBand', 'N'],
  ['L1', 'emergency-stop', '10', 'in.emergencyStopClear', 'N'],
  ['10', 'out.safetyRelay', '11', 'safety-relay.coil', 'N'],
  ['10', 'safety-relay.contact', '50'],
  [
    'L1',
    'first-low-water',
    '21',
    'second-low-water',
    '22',
    'high-limit',
    '23',
    'low-gas',
    '24',
    'high-gas',
    '25',
    'operating-control',
    '26',
    'time-clock',
    '27',
    'in.callForHeat',
    'N',
  ],
  ['21', 'in.waterAboveFirst', 'N'],
  ['22', 'in.waterAboveSecond', 'N'],
  ['23', 'in.highLimitMade', 'N'],
  ['24', 'in.gasPressureAboveLow', 'N'],
  ['25', 'in.gasPressureBelowHigh', 'N'],
  ['L1', 'out.fan', '30', 'fan-relay.coil', 'N'],
  ['L1', 'fan-relay.contact', '31', 'fan.contactor', 'N'],
  ['L1', 'out.pilotValve', '32', 'pilot-valve-relay.coil', 'N'],
  ['50', 'pilot-valve-relay.contact', '41', 'pilot-valve', 'N'],
  ['P24', 'vessel.loop', '71', 'ai.vessel', 'M24'],
  ['P5', 'damper.upper', '81', 'damper.lower', 'M24'],
  ['81', 'damper.wiper', '82', 'ai.damper', 'M24'],
  ['earth', 'flame-sensor.signal', '90', 'ai.flame-sensor', 'earth'],
];

const KINDS: readonly (readonly [RegExp, string])[] = [
  [/fuse/, 'fuse'],
  [/^in\./, 'input'],
  [/^out\./, 'output'],
  [/^ai\./, 'burden'],
  [/\.coil$|\.contactor$|^pilot-valve$/, 'coil'],
  [/\.loop$/, 'loop'],
  [/\.(upper|lower)$/, 'track'],
  [/\.wiper$/, 'wiper'],
  [/\.signal$/, 'signal'],
];

export function wiringOf(rungs: readonly (readonly string[])[]): LadderWiring {
  const wires = [...new Set(rungs.flatMap((parts) => parts.filter((_part, i) => i % 2 === 0)))];
  const names = rungs.flatMap((parts) => parts.filter((_part, i) => i % 2 === 1));
  return {
    sources: [
      { live: 'L', neutral: 'N', volts: 230, kind: 'alternating' },
      { live: 'P24', neutral: 'M24', volts: 24, kind: 'direct' },
      { live: 'P5', neutral: 'M24', volts: 5, kind: 'direct' },
    ],
    wires,
    elements: names.map(
      (name): LadderElement => ({
        name,
        kind: KINDS.find(([pattern]) => pattern.test(name))?.[1] ?? 'contact',
      }),
    ),
    rungs,
  };
}

export const wiring = wiringOf(RUNGS);
