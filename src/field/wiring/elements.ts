import type { FieldDevices } from '../sections.ts';
import { COMMAND_BITS, INPUT_BITS, type InputTerminal } from '../terminals.ts';
import type { WiringParameters } from './parameters.ts';

export type ElementKind =
  | 'contact'
  | 'fuse'
  | 'coil'
  | 'lamp'
  | 'motor'
  | 'transformer'
  | 'electronics'
  | 'input'
  | 'output'
  | 'loop'
  | 'signal'
  | 'source-out'
  | 'burden'
  | 'track'
  | 'wiper';

export type Condition = 'sound' | 'open' | 'shorted';

/** One two-ended part of a plant that can stand in a rung. */
export interface WiringElement {
  readonly name: string;
  readonly kind: ElementKind;
  /** Resistance while it conducts. */
  readonly ohm: number;
  /** Volts at which it works and below which it no longer does; 0 where there is no such thing. */
  readonly pullInVolts: number;
  readonly dropOutVolts: number;
  /** Read when the network is prepared, so that a fault may change what is behind it. */
  readonly condition: () => Condition;
  /** Beside it as it stands, not as it was built: what its insulation lets through, S. */
  readonly leakS: () => number;
  /** A plant with this device must have it in a rung. */
  readonly needed: boolean;
}

/** What a device sends over wires to something that measures it. */
export interface AnaloguePlan {
  /** The element that sends, and the one that is measured. */
  readonly from: string;
  readonly to: string;
  /** Legs of a feedback track: the two ends whose volts the wiper divides. */
  readonly legs: readonly [string, string] | null;
  /** The electrical signal (A, or share of the track) at zero of the device's own unit, and per unit. */
  readonly atZero: number;
  readonly perUnit: number;
  /** Volts the sender needs across itself; below zero: volts it can drive. */
  readonly leastVolts: number;
}

export interface WiredParameters {
  readonly field: FieldDevices;
  readonly wiring: WiringParameters;
}

/** Inputs that are terminals; the others the controller finds out by itself. */
export const INPUT_TERMINALS = [
  'callForHeat',
  'resetPressed',
  'emergencyStopClear',
  'supplyInBand',
  'controlFuseMade',
  'safetyRelayFeedback',
  'waterAboveFirst',
  'waterAboveSecond',
  'highLimitMade',
  'furnacePressureInBand',
  'gasPressureAboveLow',
  'gasPressureBelowHigh',
  'airProved',
  'upstreamValveClosed',
  'downstreamValveClosed',
  'warmUpSatisfied',
] as const satisfies readonly InputTerminal[];

/** An input of the firing-rate control, not of the machine. */
export const SECOND_SETPOINT = 'secondSetpoint';
export const SECOND_SETPOINT_BIT = 1 << 27;

export const PANEL_CONTACTS = [
  'isolator',
  'emergency-stop',
  'burner-switch',
  'reset-button',
  'second-setpoint',
] as const;
const NEEDED_ON_PANEL: readonly string[] = ['isolator', 'emergency-stop', 'burner-switch'];

export const CONTACT_OHM = 0.05;
const CONTACTOR_W = 15;
const SERVO_MOTOR_W = 12;
const SUPPLY_INPUT_OHM = 50_000;
const LOOP_BURDEN_OHM = 250;
const LOOP_OHM = 1e11;
const TRACK_OHM = 1000;
const VOLTS_INPUT_OHM = 1e6;
const SIGNAL_OHM = 1e9;
const AMPLIFIER_OHM = 100_000;
/** Metal on metal is no better. */
const LEAST_OHM = 0.1;
/** 4–20 mA (IEC 60381-1). */
const LIVE_ZERO_A = 0.004;
const LIVE_SPAN_A = 0.016;
const LOOP_LEAST_VOLTS = 10;
const OUTPUT_MOST_VOLTS = 12;
const SIGNAL_MOST_VOLTS = 500;
/** End resistors keep the wiper of a sound track off zero, so that a broken wire reads below it. */
const TRACK_ZERO_SHARE = 0.2;
const TRACK_SPAN_SHARE = 0.8;
const FULL_STROKE_DEG = 90;
/** An air-change counter measures up to so many times its reference differential. */
const COUNTER_RANGE = 1.5;

const SOUND = (): Condition => 'sound';
const TIGHT = (): number => 0;

export function listElements({ field, wiring }: WiredParameters): WiringElement[] {
  const { nominalVolts } = field.supply;
  const { inputOhm, makeShare, breakShare } = wiring.controller;
  const elements: WiringElement[] = [];
  const put = (name: string, kind: ElementKind, ohm: number, more: Partial<WiringElement> = {}) => {
    elements.push({
      name,
      kind,
      ohm,
      pullInVolts: more.pullInVolts ?? 0,
      dropOutVolts: more.dropOutVolts ?? 0,
      condition: more.condition ?? SOUND,
      leakS: more.leakS ?? TIGHT,
      needed: more.needed ?? false,
    });
  };
  const contact = (name: string, needed = true) => put(name, 'contact', CONTACT_OHM, { needed });
  const works = (ratedW: number, pullIn: number, dropOut: number) => ({
    ohm: (nominalVolts * nominalVolts) / ratedW,
    pullInVolts: pullIn * nominalVolts,
    dropOutVolts: dropOut * nominalVolts,
  });

  for (const name of PANEL_CONTACTS) contact(name, NEEDED_ON_PANEL.includes(name));
  for (const { id } of wiring.contacts) contact(id);
  for (const fuse of wiring.fuses) {
    const condition = () => (fuse.condition === 'blown' ? ('open' as const) : ('sound' as const));
    put(fuse.id, 'fuse', CONTACT_OHM, { condition, needed: true });
  }
  for (const name of contactsOfDevices(field)) contact(name);
  for (const relay of field.relays) {
    put(`${relay.id}.coil`, 'coil', relay.coilOhm, {
      pullInVolts: relay.pullInVolts,
      dropOutVolts: relay.dropOutVolts,
      condition: () => (relay.coil === 'open' ? 'open' : 'sound'),
      needed: true,
    });
    contact(`${relay.id}.contact`);
    contact(`${relay.id}.feedback`, relay.terminal === 'safetyRelay');
    put(`out.${relay.terminal}`, 'output', CONTACT_OHM, { needed: true });
  }
  for (const terminal of INPUT_TERMINALS) {
    const measures = terminal === 'supplyInBand';
    put(`in.${terminal}`, 'input', measures ? SUPPLY_INPUT_OHM : inputOhm, {
      pullInVolts: makeShare * nominalVolts,
      dropOutVolts: breakShare * nominalVolts,
      needed: isInputNeeded(terminal, field),
    });
  }
  put(`in.${SECOND_SETPOINT}`, 'input', inputOhm, {
    pullInVolts: makeShare * nominalVolts,
    dropOutVolts: breakShare * nominalVolts,
  });
  for (const load of wiring.loads) {
    const { ohm, ...volts } = works(load.ratedW, load.pullInShare, load.dropOutShare);
    const transformer = field.ignitionTransformers.find(({ id }) => id === load.id);
    const condition = () => (transformer?.health === 0 ? ('open' as const) : load.condition);
    put(load.id, load.kind, ohm, { ...volts, condition, needed: true });
  }
  for (const drive of field.drives) {
    const { ohm, ...volts } = works(CONTACTOR_W, 0.75, 0.35);
    put(`${drive.id}.contactor`, 'coil', ohm, {
      ...volts,
      condition: () => (drive.contactorCoil === 'open' ? 'open' : 'sound'),
      needed: true,
    });
    if (drive.kind !== 'variable speed') continue;
    put(`ao.${drive.id}`, 'source-out', LOOP_OHM, { needed: true });
    put(`${drive.id}.reference`, 'burden', LOOP_BURDEN_OHM, { needed: true });
    put(`${drive.id}.feedback`, 'loop', LOOP_OHM, { needed: true });
    put(`ai.${drive.id}`, 'burden', LOOP_BURDEN_OHM, { needed: true });
  }
  for (const servo of field.servos) {
    const { ohm, ...volts } = works(SERVO_MOTOR_W, 0.6, 0.5);
    put(`${servo.id}.motor`, 'motor', ohm, {
      ...volts,
      condition: () => (servo.motorHealth === 0 ? 'open' : 'sound'),
      needed: true,
    });
    put(`${servo.id}.upper`, 'track', 0.5 * TRACK_OHM, { needed: true });
    put(`${servo.id}.lower`, 'track', 0.5 * TRACK_OHM, { needed: true });
    put(`${servo.id}.wiper`, 'wiper', 1, {
      condition: () => (servo.feedback === 'open' ? 'open' : 'sound'),
      needed: true,
    });
    put(`ai.${servo.id}`, 'burden', VOLTS_INPUT_OHM, { needed: true });
    put(`in.${servo.id}`, 'input', inputOhm, {
      pullInVolts: makeShare * nominalVolts,
      dropOutVolts: breakShare * nominalVolts,
    });
  }
  for (const { id } of loopsOf(field)) {
    put(`${id}.loop`, 'loop', LOOP_OHM, { needed: true });
    put(`ai.${id}`, 'burden', LOOP_BURDEN_OHM, { needed: true });
  }
  for (const { id, kind } of field.feedControls) {
    if (kind !== 'modulating') continue;
    put(`ao.${id}`, 'source-out', LOOP_OHM, { needed: true });
    put(`${id}.valve`, 'burden', LOOP_BURDEN_OHM, { needed: true });
  }
  for (const sensor of field.flameSensors) {
    const isRod = sensor.kind === 'ionisation';
    put(`${sensor.id}.signal`, 'signal', SIGNAL_OHM, {
      leakS: () => (isRod ? 1 / Math.max(LEAST_OHM, sensor.earthOhm) : 0),
      needed: true,
    });
    const amplifierOhm = isRod ? Math.max(LEAST_OHM, sensor.sourceOhm) : AMPLIFIER_OHM;
    put(`ai.${sensor.id}`, 'burden', amplifierOhm, { needed: true });
  }
  return elements;
}

export function listAnalogue(field: FieldDevices): AnaloguePlan[] {
  const current = (low: number, high: number) => ({
    atZero: LIVE_ZERO_A - (LIVE_SPAN_A * low) / (high - low),
    perUnit: LIVE_SPAN_A / (high - low),
    legs: null,
  });
  return [
    ...loopsOf(field).map(({ id, low, high }) => ({
      from: `${id}.loop`,
      to: `ai.${id}`,
      leastVolts: LOOP_LEAST_VOLTS,
      ...current(low, high),
    })),
    ...field.servos.map(
      ({ id }): AnaloguePlan => ({
        from: `${id}.wiper`,
        to: `ai.${id}`,
        legs: [`${id}.upper`, `${id}.lower`],
        leastVolts: Number.NEGATIVE_INFINITY,
        atZero: TRACK_ZERO_SHARE,
        perUnit: TRACK_SPAN_SHARE / FULL_STROKE_DEG,
      }),
    ),
    ...field.drives.flatMap((drive): AnaloguePlan[] => {
      if (drive.kind !== 'variable speed') return [];
      const fullRpm = ((120 * drive.maxHz) / drive.poles) * drive.beltRatio;
      return [
        {
          from: `ao.${drive.id}`,
          to: `${drive.id}.reference`,
          leastVolts: -OUTPUT_MOST_VOLTS,
          ...current(0, fullRpm),
        },
        {
          from: `${drive.id}.feedback`,
          to: `ai.${drive.id}`,
          leastVolts: LOOP_LEAST_VOLTS,
          ...current(0, fullRpm),
        },
      ];
    }),
    ...field.feedControls.flatMap(({ id, kind }): AnaloguePlan[] =>
      kind === 'modulating'
        ? [
            {
              from: `ao.${id}`,
              to: `${id}.valve`,
              leastVolts: -OUTPUT_MOST_VOLTS,
              ...current(0, 1),
            },
          ]
        : [],
    ),
    ...field.flameSensors.map(
      ({ id }): AnaloguePlan => ({
        from: `${id}.signal`,
        to: `ai.${id}`,
        legs: null,
        leastVolts: -SIGNAL_MOST_VOLTS,
        atZero: 0,
        perUnit: 1e-6,
      }),
    ),
  ];
}

/** Every 4–20 mA transmitter with the range that its current spans. */
function loopsOf(field: FieldDevices): { id: string; low: number; high: number }[] {
  return [
    ...field.transmitters.map(({ id, lowPa, highPa }) => ({ id, low: lowPa, high: highPa })),
    ...field.thermometers.map(({ id, lowC, highC }) => ({ id, low: lowC, high: highC })),
    ...field.levelProbes.map(({ id, lowM, highM }) => ({ id, low: lowM, high: highM })),
    ...field.airChangeCounters.map(({ id, referencePa }) => ({
      id,
      low: 0,
      high: COUNTER_RANGE * referencePa,
    })),
  ];
}

/** Contacts that a device of the field moves, each by its own name. */
function contactsOfDevices(field: FieldDevices): string[] {
  return [
    ...field.switches.map(({ id }) => id),
    ...field.temperatureSwitches.map(({ id }) => id),
    ...field.waterCutOffs.map(({ id }) => id),
    ...field.closedProofs.map(({ id }) => id),
    ...field.timeClocks.map(({ id }) => id),
    ...field.remoteContacts.map(({ id }) => id),
    ...field.feedControls.flatMap(({ id, kind }) => (kind === 'on-off' ? [`${id}.pump`] : [])),
    ...field.servos.flatMap(({ id, endSwitch }) =>
      endSwitch === 'fitted' ? [`${id}.end-switch`] : [],
    ),
  ];
}

function isInputNeeded(terminal: InputTerminal, field: FieldDevices): boolean {
  switch (terminal) {
    case 'safetyRelayFeedback':
      return field.relays.some((relay) => relay.terminal === 'safetyRelay');
    case 'waterAboveFirst':
      return field.waterCutOffs.some(({ stands }) => stands === 'first');
    case 'waterAboveSecond':
      return field.waterCutOffs.some(({ stands }) => stands === 'second');
    case 'upstreamValveClosed':
      return field.closedProofs.some(({ valve }) => valve === 'upstream valve');
    case 'downstreamValveClosed':
      return field.closedProofs.some(({ valve }) => valve === 'downstream valve');
    case 'resetPressed':
      return false;
    case 'callForHeat':
    case 'emergencyStopClear':
    case 'supplyInBand':
    case 'controlFuseMade':
      return true;
    default:
      return [...field.switches, ...field.temperatureSwitches].some(
        ({ feeds }) => feeds === terminal,
      );
  }
}

/** Bit of the input word that an element makes; 0 for one that is no digital input. */
export function inputBit(name: string): number {
  if (!name.startsWith('in.')) return 0;
  const terminal = name.slice(3);
  if (terminal === SECOND_SETPOINT) return SECOND_SETPOINT_BIT;
  return INPUT_BITS[terminal as InputTerminal] ?? 0;
}

/** Bit of the command word that closes an element; 0 for one that is no output. */
export function commandBit(name: string): number {
  if (!name.startsWith('out.')) return 0;
  return COMMAND_BITS[name.slice(4) as keyof typeof COMMAND_BITS] ?? 0;
}
