import { escapeKgS } from '../../plant/gas/index.ts';
import type { RunState } from '../run-state.ts';

/** Air that changes in a boiler room by itself, m³/s: own training value for an open louvre. */
const ROOM_AIR_M3S = 0.08;
const AIR_KG_M3 = 1.2;
const NOSE_SHARE = 0.001;

/**
 * Gas in the air of the boiler room, as a share of the lower flammability limit: what escapes now
 * over the air that goes through the room, as if it had always escaped so. A nose has it to one
 * digit, from a thousandth of the limit.
 *
 * Left out: the time a room takes to fill, pockets under a ceiling, wind.
 */
export function smell({ plant }: RunState): number {
  const { gas, air, fuel } = plant;
  let escaping = 0;
  for (const kgS of escapeKgS(gas)) escaping += Math.max(0, kgS);
  if (escaping === 0) return 0;
  const gasM3S = escaping / gas.gas.densityKgM3;
  const roomM3S = ROOM_AIR_M3S + Math.max(0, air.airFlowKgS) / AIR_KG_M3;
  const share = gasM3S / roomM3S / fuel.lowerLimit;
  return share < NOSE_SHARE ? 0 : oneDigit(share);
}

function oneDigit(share: number): number {
  let unit = 1;
  while (unit > share) unit /= 10;
  return Math.round(share / unit) * unit;
}
