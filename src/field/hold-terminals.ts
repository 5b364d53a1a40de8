import type { Field } from './field.ts';
import { ALL_INPUTS, INPUT_BITS } from './terminals.ts';

/** Before it has read anything the controller takes no limit for open, and nothing for proved. */
export const NOTHING_READ =
  INPUT_BITS.emergencyStopClear |
  INPUT_BITS.controlFuseMade |
  INPUT_BITS.waterAboveFirst |
  INPUT_BITS.waterAboveSecond |
  INPUT_BITS.highLimitMade |
  INPUT_BITS.furnacePressureInBand |
  INPUT_BITS.gasPressureAboveLow |
  INPUT_BITS.gasPressureBelowHigh;

/**
 * What the controller makes of its terminals.
 *
 * With too few volts behind its monitor for any input to make, a dead terminal says nothing: neither
 * an open limit nor a pressed stop can be told from a supply that has gone. So the terminals keep
 * what was read last until there are volts again. What the controller finds out by itself it keeps
 * too, but only until the monitor says that the supply is out of band.
 *
 * @param decided what it finds out by itself
 * @param shown what its terminals show
 */
export function holdTerminals(field: Field, decided: number, shown: number): number {
  const { supply } = field;
  if (decided === field.heldDecisions && shown === field.heldTerminals && supply.monitor.made) {
    return decided & shown & ALL_INPUTS;
  }
  if (supply.volts * supply.perNominalVolt >= field.parameters.wiring.controller.makeShare) {
    field.heldTerminals = shown;
    field.heldDecisions = decided;
    return decided & shown & ALL_INPUTS;
  }
  if (supply.monitor.made) return field.heldDecisions & field.heldTerminals & ALL_INPUTS;
  if ((field.heldDecisions & INPUT_BITS.supplyInBand) !== 0) {
    // That the supply has gone is told alone first: all else that now falls follows from it.
    field.heldDecisions &= ~INPUT_BITS.supplyInBand;
    return field.heldDecisions & field.heldTerminals & ALL_INPUTS;
  }
  return decided & field.heldTerminals & ALL_INPUTS;
}
