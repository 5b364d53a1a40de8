/**
 * The parts a technician may act on, by the words of the trade: which repairs make sense on each,
 * how long they take and what a new one costs. Minutes and costs are own training values.
 */
import type { RepairWay } from './remedy.ts';

/** Minutes of work by way; a way that is not there makes no sense on the part. */
export type Minutes = Readonly<Partial<Record<RepairWay, number>>>;

export interface PartRow {
  readonly minutes: Minutes;
  /** What has to be opened for it: gas-tight or water-tight work. */
  readonly opens: 'gas' | 'water' | null;
  readonly electrical: boolean;
  /** Of a new part, in training units of about an hour's wage. */
  readonly cost: number;
}

const plain = (cost: number, minutes: Minutes): PartRow => ({
  minutes,
  opens: null,
  electrical: false,
  cost,
});
const onGas = (cost: number, minutes: Minutes): PartRow => ({
  ...plain(cost, minutes),
  opens: 'gas',
});
const onWater = (cost: number, minutes: Minutes): PartRow => ({
  ...plain(cost, minutes),
  opens: 'water',
});
const electrical = (cost: number, minutes: Minutes): PartRow => ({
  ...plain(cost, minutes),
  electrical: true,
});

const GAS_VALVE = onGas(12, { replace: 120, clean: 90 });
const COIL = electrical(2, { replace: 25 });
const CLOSED_PROOF = electrical(2, { replace: 40 });
const GAS_SWITCH = onGas(2, { replace: 40, clean: 30 });
const TRANSMITTER = onGas(6, { replace: 45, reset: 20 });
const IMPULSE_LINE = onGas(1, { clean: 35, replace: 45 });
const GAS_JOINT = onGas(0.5, { tighten: 20, refit: 40 });
const SERVO = electrical(9, { replace: 75, free: 30, realign: 30 });
const RELAY = electrical(1.5, { replace: 20 });
const FUSE = electrical(0.2, { replace: 5 });
const WIRING = electrical(1, { refit: 15, tighten: 15, replace: 60 });
/** Wiring of a contact, across which a jumper can be. */
const CONTACT_WIRING = electrical(1, {
  refit: 15,
  tighten: 15,
  replace: 60,
  'remove jumper': 5,
});
const SET_ON_PAPER = plain(0, {});

const ROWS = {
  'gas supply': plain(0, { report: 20 }),
  'gas train pipework': plain(0, { 'purge air': 30 }),
  'manual gas cock': onGas(3, { replace: 60 }),
  strainer: onGas(1, { clean: 40, replace: 50 }),
  'gas regulator': onGas(8, { replace: 90, clean: 60 }),
  'regulator breather': plain(0.2, { clean: 15 }),
  'pilot regulator': onGas(3, { replace: 50, clean: 40 }),
  'pilot orifice': onGas(0.5, { clean: 30, replace: 30 }),
  'upstream valve': GAS_VALVE,
  'downstream valve': GAS_VALVE,
  'vent valve': GAS_VALVE,
  'pilot valve': onGas(4, { replace: 60, clean: 50 }),
  'upstream valve coil': COIL,
  'downstream valve coil': COIL,
  'vent valve coil': COIL,
  'pilot valve coil': COIL,
  'upstream valve proof of closure': CLOSED_PROOF,
  'downstream valve proof of closure': CLOSED_PROOF,
  'fuel control valve': onGas(10, { replace: 120, free: 45, clean: 90 }),
  'fuel control valve coupling': plain(1, { refit: 30, replace: 45, tighten: 15 }),
  'fuel valve servo': SERVO,
  'low-gas switch': GAS_SWITCH,
  'high-gas switch': GAS_SWITCH,
  'interspace pressure transmitter': TRANSMITTER,
  'interspace impulse line': IMPULSE_LINE,
  'gas supply pressure transmitter': TRANSMITTER,
  'cock joint': GAS_JOINT,
  'strainer joint': GAS_JOINT,
  'regulator joint': GAS_JOINT,
  'main valve joint': GAS_JOINT,
  'fuel valve joint': GAS_JOINT,
  'burner joint': GAS_JOINT,
  'pilot line joint': GAS_JOINT,

  'fan drive': electrical(20, { replace: 120, reset: 5 }),
  'fan contactor': electrical(3, { replace: 30, clean: 20 }),
  'fan motor wiring': electrical(1, { refit: 20, tighten: 15 }),
  'fan motor': electrical(15, { replace: 180 }),
  'fan belt': plain(1, { replace: 40, tighten: 20 }),
  'fan speed pick-up': electrical(2, { realign: 20, replace: 30, clean: 15 }),
  'air damper': plain(8, { free: 40, refit: 60, replace: 180 }),
  'damper servo': SERVO,
  'damper servo feedback': electrical(2, { replace: 40, realign: 25, clean: 15 }),
  'airflow switch': plain(2, { replace: 30 }),
  'airflow switch tube': plain(0.3, { refit: 10, clean: 15, replace: 20 }),
  'furnace pressure switch': plain(2, { replace: 30, clean: 15 }),
  'air inlet screen': plain(1, { clean: 15, replace: 20 }),
  flue: plain(0, { clean: 180, report: 15 }),
  'stack damper': plain(4, { open: 15, tighten: 15, replace: 120 }),
  'boiler room openings': plain(0, { open: 10, clean: 20, report: 10 }),
  'boiler passes': plain(0, { clean: 240 }),
  'combustion air': plain(0, { report: 20 }),

  'ignition transformer': electrical(3, { replace: 30 }),
  'ignition lead': electrical(0.5, { replace: 20, refit: 10, clean: 10 }),
  'ignition electrode': plain(1, { replace: 35, realign: 25, clean: 20 }),

  scanner: plain(5, { replace: 25, clean: 10, realign: 20 }),
  'flame rod': plain(1, { replace: 25, clean: 20, realign: 20 }),
  'flame sensor cable': electrical(1, { refit: 15, tighten: 10, replace: 40 }),
  'flame amplifier': electrical(6, { replace: 20, reset: 5 }),
  'flame relay': electrical(2, { replace: 20 }),

  'pilot burner': onGas(3, { tighten: 25, realign: 40, replace: 60, clean: 40 }),
  'main gas nozzle': onGas(3, { clean: 90, replace: 90 }),
  'burner head': plain(6, { realign: 60, clean: 90, replace: 150 }),
  'fuel and air points': SET_ON_PAPER,
  'fuel-air curve': plain(0, { reset: 90 }),

  'feed pump': electrical(12, { reset: 10, replace: 150 }),
  'feed control': electrical(6, { replace: 60 }),
  'feed valve': onWater(6, { free: 30, replace: 90, clean: 60 }),
  'circulating pump': electrical(8, { reset: 10, replace: 90 }),
  'system valve': onWater(2, { open: 5, replace: 90 }),
  'level probe': onWater(5, { clean: 60, replace: 75 }),
  'gauge glass': plain(1, { open: 10, clean: 20, replace: 60 }),
  'blow-down valve': onWater(4, { tighten: 5, replace: 120 }),
  'safety valve': onWater(8, { replace: 120, report: 15 }),
  'heating surface': plain(0, { clean: 240 }),

  'first low-water cut-off': onWater(5, { replace: 90, clean: 60 }),
  'second low-water cut-off': onWater(5, { replace: 90, clean: 60 }),
  'high limit': plain(3, { replace: 60 }),
  'operating control': plain(3, { replace: 60, refit: 15 }),
  'warm-up control': plain(3, { replace: 60 }),
  'vessel pressure transmitter': onWater(6, { replace: 60, reset: 20 }),
  'vessel impulse line': onWater(1, { clean: 40, replace: 60 }),
  'water temperature transmitter': plain(3, { replace: 30, reset: 20 }),
  'firing-rate control': electrical(10, { replace: 60 }),
  'firing-rate selector': electrical(1, { replace: 25 }),
  'time clock': electrical(2, { reset: 10, replace: 30 }),
  'remote enable': electrical(1, { report: 15, replace: 25 }),

  'mains supply': electrical(0, { report: 20 }),
  'mains feed': electrical(1, { tighten: 30, refit: 45 }),
  'control supply wiring': WIRING,
  'control fuse': FUSE,
  'loop supply fuse': FUSE,
  'safety fuse': FUSE,
  'safety relay': RELAY,
  'safety relay feedback wiring': WIRING,
  'upstream valve output relay': RELAY,
  'downstream valve output relay': RELAY,
  'pilot valve output relay': RELAY,
  'ignition output relay': RELAY,
  'fan output relay': RELAY,

  'upstream valve wiring': WIRING,
  'downstream valve wiring': WIRING,
  'pilot valve wiring': WIRING,
  'vent valve wiring': WIRING,
  'ignition transformer wiring': WIRING,
  'fan contactor wiring': WIRING,
  'damper servo wiring': WIRING,
  'damper feedback wiring': WIRING,
  'drive reference wiring': WIRING,
  'airflow switch wiring': CONTACT_WIRING,
  'low-gas switch wiring': CONTACT_WIRING,
  'high-gas switch wiring': CONTACT_WIRING,
  'first low-water cut-off wiring': CONTACT_WIRING,
  'high limit wiring': CONTACT_WIRING,
  'operating control wiring': CONTACT_WIRING,
  'upstream valve proof of closure wiring': CONTACT_WIRING,
  'vessel pressure transmitter wiring': WIRING,
  'interspace pressure transmitter wiring': WIRING,
  'level probe wiring': WIRING,
  'feed pump wiring': WIRING,
  'circulating pump wiring': WIRING,
} as const satisfies Record<string, PartRow>;

export type PartName = keyof typeof ROWS;

export const PARTS: Readonly<Record<PartName, PartRow>> = ROWS;
export const PART_NAMES = Object.keys(ROWS) as readonly PartName[];
