import type { FieldDevices, LoadParameters, WiringParameters } from '../../src/field/index.ts';

/** A plain wiring of these devices: every contact between live and its own input. */
export function usualWiring(field: FieldDevices): WiringParameters {
  const rungs: string[][] = [
    ['L', 'isolator', 'L0', 'control-fuse', 'L1'],
    ['L0', 'in.supplyInBand', 'N'],
    ['L1', 'in.controlFuseMade', 'N'],
    ['L1', 'controller', 'N'],
    ['L1', 'emergency-stop', '10', 'in.emergencyStopClear', 'N'],
    ['L1', 'reset-button', '12', 'in.resetPressed', 'N'],
  ];
  let wire = 20;
  const next = () => `${wire++}`;
  const series = (from: string, elements: readonly string[], to: string) => {
    const rung = [from];
    elements.forEach((element, i) => {
      rung.push(element, i === elements.length - 1 ? to : next());
    });
    rungs.push(rung);
  };
  const onInputs = new Map<string, string[]>([['callForHeat', ['burner-switch']]]);
  const feeds = (terminal: string, element: string) => {
    const before = onInputs.get(terminal);
    if (before === undefined) onInputs.set(terminal, [element]);
    else before.push(element);
  };
  for (const { id, stands } of field.waterCutOffs) {
    feeds(stands === 'first' ? 'waterAboveFirst' : 'waterAboveSecond', id);
  }
  for (const { id, feeds: terminal } of [...field.switches, ...field.temperatureSwitches]) {
    feeds(terminal, id);
  }
  for (const { id, valve } of field.closedProofs) {
    feeds(valve === 'upstream valve' ? 'upstreamValveClosed' : 'downstreamValveClosed', id);
  }
  for (const { id, switches } of [...field.timeClocks, ...field.remoteContacts]) {
    feeds(switches === 'call for heat' ? 'callForHeat' : 'secondSetpoint', id);
  }
  for (const [terminal, contacts] of onInputs) series('L1', [...contacts, `in.${terminal}`], 'N');

  const loads: LoadParameters[] = [load('controller', 'electronics', 8)];
  const safety = field.relays.find(({ terminal }) => terminal === 'safetyRelay');
  if (safety !== undefined) {
    series('10', [`${safety.id}.contact`], '50');
    series('L1', [`${safety.id}.feedback`, 'in.safetyRelayFeedback'], 'N');
  }
  for (const { id, terminal } of field.relays) {
    const output = `out.${terminal}`;
    series(terminal === 'safetyRelay' ? '10' : 'L1', [output, `${id}.coil`], 'N');
    const feed = BEHIND_SAFETY_RELAY.includes(terminal) && safety !== undefined ? '50' : 'L1';
    const fed = fedBy(field, terminal);
    if (fed.length === 0) continue;
    const joined = next();
    series(feed, [`${id}.contact`], joined);
    for (const name of fed) {
      series(joined, [name], 'N');
      if (terminal !== 'fan') loads.push(load(name, terminal === 'alarm' ? 'lamp' : 'coil', 30));
    }
  }
  for (const { id, endSwitch } of field.servos) {
    series('L1', [`${id}.motor`], 'N');
    const middle = next();
    series('P5', [`${id}.upper`], middle);
    series(middle, [`${id}.lower`], 'M24');
    series(middle, [`${id}.wiper`, `ai.${id}`], 'M24');
    if (endSwitch === 'fitted') series('L1', [`${id}.end-switch`, `in.${id}`], 'N');
  }
  for (const { id, kind } of field.drives) {
    if (kind !== 'variable speed') continue;
    series('M24', [`ao.${id}`, `${id}.reference`], 'M24');
    series('P24', [`${id}.feedback`, `ai.${id}`], 'M24');
  }
  const loops = [
    ...field.transmitters,
    ...field.thermometers,
    ...field.levelProbes,
    ...field.airChangeCounters,
  ];
  for (const { id } of loops) {
    series('P24', [`${id}.loop`, `ai.${id}`], 'M24');
  }
  for (const { id, kind } of field.feedControls) {
    series('L1', kind === 'on-off' ? [`${id}.pump`, 'feed-pump'] : ['feed-pump'], 'N');
    loads.push(load('feed-pump', 'coil', 20));
    if (kind === 'modulating') series('M24', [`ao.${id}`, `${id}.valve`], 'M24');
  }
  for (const { id } of field.flameSensors) series('earth', [`${id}.signal`, `ai.${id}`], 'earth');
  return {
    sources: [
      source('mains', 'alternating', 'L', 'N', 24, 0.4),
      source('loop-supply', 'direct', 'P24', 'M24', 24, 1),
      source('track-supply', 'direct', 'P5', 'M24', 5, 1),
    ],
    fuses: [{ id: 'control-fuse', ratedA: 6, condition: 'sound' }],
    contacts: [],
    loads,
    controller: { inputOhm: 15000, makeShare: 0.6, breakShare: 0.35 },
    cables: [],
    rungs,
    joints: [],
    bridges: [],
    swaps: [],
  };
}

const BEHIND_SAFETY_RELAY: readonly string[] = [
  'spark',
  'pilotValve',
  'upstreamValve',
  'downstreamValve',
];

function fedBy(field: FieldDevices, terminal: string): string[] {
  switch (terminal) {
    case 'fan':
      return field.drives.map(({ id }) => `${id}.contactor`);
    case 'spark':
      return field.ignitionTransformers.map(({ id }) => id);
    case 'pilotValve':
      return ['pilot-valve'];
    case 'upstreamValve':
      return ['upstream-valve'];
    case 'downstreamValve':
      return ['downstream-valve'];
    case 'ventValve':
      return ['vent-valve'];
    case 'alarm':
      return ['alarm-lamp'];
    default:
      return [];
  }
}

function load(id: string, kind: LoadParameters['kind'], ratedW: number): LoadParameters {
  return { id, kind, ratedW, pullInShare: 0.75, dropOutShare: 0.35, condition: 'sound' };
}

function source(
  id: string,
  kind: 'alternating' | 'direct',
  live: string,
  neutral: string,
  volts: number,
  seriesOhm: number,
) {
  return { id, kind, live, neutral, volts, seriesOhm, bonded: true };
}
