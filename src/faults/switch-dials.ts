/** The dials of pressure and temperature switches. */
import type { PressureSwitchParameters, TemperatureSwitchParameters } from '../field/index.ts';
import type { Dial } from './dial.ts';
import type { PartName } from './parts.ts';
import type { FaultSubject } from './subject.ts';

export const SWITCH_POINT = 'switch point';
const DIFFERENTIAL = 'differential';

const SWITCH_PARTS: Readonly<Record<PressureSwitchParameters['feeds'], PartName>> = {
  airProved: 'airflow switch',
  gasPressureAboveLow: 'low-gas switch',
  gasPressureBelowHigh: 'high-gas switch',
  furnacePressureInBand: 'furnace pressure switch',
  callForHeat: 'operating control',
  highLimitMade: 'high limit',
  warmUpSatisfied: 'warm-up control',
};

export function switchDials(s: FaultSubject): readonly Dial[] {
  return [
    ...s.field.switches.flatMap((one) => pressureDials(s, one)),
    ...s.field.temperatureSwitches.flatMap(temperatureDials),
  ];
}

/**
 * The dial of a switch says where the contact changes on the way up: there a proof makes and a limit
 * breaks. Its differential stays; a drift is not on the dial.
 */
function switchDial(
  part: PartName,
  unit: 'Pa' | '°C',
  max: number,
  made: boolean,
  points: { make: number; break: number },
): Dial {
  return {
    part,
    setting: SWITCH_POINT,
    unit,
    min: 0,
    max,
    read: () => (made ? points.make : points.break),
    write: (value) => {
      const differential = points.break - points.make;
      points.make = made ? value : value - differential;
      points.break = made ? value + differential : value;
    },
  };
}

function pressureDials(s: FaultSubject, one: PressureSwitchParameters): Dial[] {
  const part = SWITCH_PARTS[one.feeds];
  const points = {
    get make() {
      return one.makePa;
    },
    set make(value) {
      one.makePa = value;
    },
    get break() {
      return one.breakPa;
    },
    set break(value) {
      one.breakPa = value;
    },
  };
  const max = highestPa(s, one.feeds);
  const dials = [switchDial(part, 'Pa', max, one.makesOn === 'rise', points)];
  if (part === 'operating control') dials.push(differentialDial(part, 'Pa', 0.5 * max, points));
  return dials;
}

function temperatureDials(one: TemperatureSwitchParameters): Dial[] {
  const part = SWITCH_PARTS[one.feeds];
  const points = {
    get make() {
      return one.makeC;
    },
    set make(value) {
      one.makeC = value;
    },
    get break() {
      return one.breakC;
    },
    set break(value) {
      one.breakC = value;
    },
  };
  const dials = [switchDial(part, '°C', HOTTEST_C, one.makesOn === 'rise', points)];
  if (part === 'operating control') dials.push(differentialDial(part, 'K', WIDEST_K, points));
  return dials;
}
const HOTTEST_C = 130;
const WIDEST_K = 30;

/** How far below its cut-out a control asks for heat again. */
function differentialDial(
  part: PartName,
  unit: 'Pa' | 'K',
  max: number,
  points: { make: number; readonly break: number },
): Dial {
  return {
    part,
    setting: DIFFERENTIAL,
    unit,
    min: LEAST_SHARE * max,
    max,
    read: () => points.break - points.make,
    write: (value) => {
      points.make = points.break - value;
    },
  };
}

/** No contact makes where it breaks. */
const LEAST_SHARE = 0.01;

/** What the dial of a switch reaches, from sizes that no fault changes. */
function highestPa(s: FaultSubject, feeds: PressureSwitchParameters['feeds']): number {
  switch (feeds) {
    case 'airProved':
    case 'furnacePressureInBand':
      return 2 * s.airPath.fan.ratedPressurePa;
    case 'gasPressureAboveLow':
    case 'gasPressureBelowHigh':
      return 2 * highestGasPa(s);
    default:
      return 1.5 * s.vessel.safetyValvePa;
  }
}

/** The highest pressure that the gas of this train stands at, as it was designed. */
export function highestGasPa(s: FaultSubject): number {
  return s.gasTrain.nodes.reduce((most, node) => Math.max(most, node.startGaugePa), 1000);
}
