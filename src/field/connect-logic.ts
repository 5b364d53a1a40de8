import { decides } from './controller-logic.ts';
import type { Field } from './field.ts';

/** Which decision of the controller's own stands for which input of the machine. */
export function connectLogic(field: Field): void {
  const { logic } = field;
  decides(logic, 'supplyInBand', field.supply.inBand);
  for (const relay of field.flameRelays) decides(logic, 'flame', relay.contact);
  for (const comparator of field.interspaceComparators) {
    decides(logic, 'interspaceEmpty', comparator.empty.contact);
    decides(logic, 'interspaceFull', comparator.full.contact);
  }
  if (field.damper !== null) {
    decides(logic, 'damperAtPurge', field.damper.atPurge.contact);
    decides(logic, 'damperAtLightOff', field.damper.atLightOff.contact);
  }
  if (field.fuelValve !== null && field.fuelValve !== field.damper) {
    decides(logic, 'fuelValveAtLightOff', field.fuelValve.atLightOff.contact);
  }
  for (const drive of field.drives) {
    if (!drive.variable) continue;
    decides(logic, 'fanAtPurgeSpeed', drive.atPurge.contact);
    decides(logic, 'fanAtLightOffSpeed', drive.atLightOff.contact);
  }
  for (const counter of field.airChangeCounters) {
    decides(logic, 'airChangesCounted', counter.contact);
  }
  decides(logic, 'positionsOnCurve', field.curveSupervision.positionsContact);
  decides(logic, 'speedOnCurve', field.curveSupervision.speedContact);
}
