import type { Field } from './field.ts';
import { standInSeries } from './terminal-strings.ts';

/** Which contact of which device stands before which input terminal of the machine. */
export function connectTerminals(field: Field): void {
  const { strings } = field;
  standInSeries(strings, 'callForHeat', field.panelHeat);
  standInSeries(strings, 'resetPressed', field.panelReset);
  standInSeries(strings, 'emergencyStopClear', field.panelEmergency);
  standInSeries(strings, 'supplyInBand', field.supply.inBand);
  standInSeries(strings, 'controlFuseMade', field.supply.fuseMade);
  if (field.safetyRelay !== null) {
    standInSeries(strings, 'safetyRelayFeedback', field.safetyRelay.feedback);
  }
  for (const cutOff of field.waterCutOffs) {
    const first = cutOff.parameters.stands === 'first';
    standInSeries(strings, first ? 'waterAboveFirst' : 'waterAboveSecond', cutOff.snap.contact);
  }
  for (const s of [...field.airSwitches, ...field.slowSwitches]) {
    standInSeries(strings, s.parameters.feeds, s.snap.contact);
  }
  for (const relay of field.flameRelays) standInSeries(strings, 'flame', relay.contact);
  for (const proof of field.closedProofs) {
    const terminal = proof.upstream ? 'upstreamValveClosed' : 'downstreamValveClosed';
    standInSeries(strings, terminal, proof.snap.contact);
  }
  for (const comparator of field.interspaceComparators) {
    standInSeries(strings, 'interspaceEmpty', comparator.empty.contact);
    standInSeries(strings, 'interspaceFull', comparator.full.contact);
  }
  if (field.damper !== null) {
    standInSeries(strings, 'damperAtPurge', field.damper.atPurge.contact);
    standInSeries(strings, 'damperAtLightOff', field.damper.atLightOff.contact);
  }
  if (field.fuelValve !== null && field.fuelValve !== field.damper) {
    standInSeries(strings, 'fuelValveAtLightOff', field.fuelValve.atLightOff.contact);
  }
  for (const drive of field.drives) {
    if (!drive.variable) continue;
    standInSeries(strings, 'fanAtPurgeSpeed', drive.atPurge.contact);
    standInSeries(strings, 'fanAtLightOffSpeed', drive.atLightOff.contact);
  }
  for (const counter of field.airChangeCounters) {
    standInSeries(strings, 'airChangesCounted', counter.contact);
  }
  standInSeries(strings, 'positionsOnCurve', field.curveSupervision.positionsContact);
  standInSeries(strings, 'speedOnCurve', field.curveSupervision.speedContact);
}
