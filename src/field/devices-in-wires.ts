import type { AnalogueInput } from './analogue-input.ts';
import type { Contact } from './contact.ts';
import type { Field } from './field.ts';

/** What has a contact, a signal or an input somewhere in the wiring. */
export type DevicesInWires = Pick<
  Field,
  | 'relays'
  | 'servos'
  | 'drives'
  | 'transmitters'
  | 'airSwitches'
  | 'slowSwitches'
  | 'closedProofs'
  | 'temperatureSwitches'
  | 'thermometers'
  | 'levelProbes'
  | 'waterCutOffs'
  | 'feedControls'
  | 'timeClocks'
  | 'remoteContacts'
  | 'flameSensors'
  | 'airChangeCounters'
  | 'isolator'
  | 'panelHeat'
  | 'panelReset'
  | 'panelEmergency'
  | 'panelSetback'
  | 'target'
>;

/** Every contact that stands in the wiring, by the name of its element. */
export function contactsOf(field: DevicesInWires): Map<string, Contact> {
  const contacts = new Map<string, Contact>([
    ['isolator', field.isolator],
    ['burner-switch', field.panelHeat],
    ['reset-button', field.panelReset],
    ['emergency-stop', field.panelEmergency],
    ['second-setpoint', field.panelSetback],
  ]);
  const switches = [
    ...field.airSwitches,
    ...field.slowSwitches,
    ...field.temperatureSwitches,
    ...field.waterCutOffs,
    ...field.closedProofs,
  ];
  for (const { parameters, snap } of switches) contacts.set(parameters.id, snap.contact);
  for (const { parameters, contact } of [...field.timeClocks, ...field.remoteContacts]) {
    contacts.set(parameters.id, contact);
  }
  for (const { parameters, pump } of field.feedControls) {
    contacts.set(`${parameters.id}.pump`, pump.contact);
  }
  for (const { parameters, contact, feedback } of field.relays) {
    contacts.set(`${parameters.id}.contact`, contact);
    contacts.set(`${parameters.id}.feedback`, feedback);
  }
  for (const { parameters, endSwitch } of field.servos) {
    contacts.set(`${parameters.id}.end-switch`, endSwitch);
  }
  return contacts;
}

/** What each sender puts on its wires at a moment; only a meter asks. */
export function signalsOf(field: DevicesInWires): Map<string, () => number> {
  const signals = new Map<string, () => number>();
  for (const t of field.transmitters) {
    const sent = () => Math.max(t.lowPa, Math.min(t.highPa, t.sensedPa + t.errorPa));
    signals.set(`${t.parameters.id}.loop`, sent);
  }
  for (const t of field.thermometers) signals.set(`${t.parameters.id}.loop`, () => t.sensedC);
  for (const p of field.levelProbes) signals.set(`${p.parameters.id}.loop`, () => p.sensedM);
  for (const s of field.servos) {
    signals.set(`${s.parameters.id}.wiper`, () => s.motorDeg + s.offsetDeg + s.noiseDeg);
  }
  for (const d of field.drives) {
    signals.set(`ao.${d.parameters.id}`, () => field.target.fanRpm);
    signals.set(`${d.parameters.id}.feedback`, () => d.sensedRpm);
  }
  for (const c of field.feedControls) signals.set(`ao.${c.parameters.id}`, () => c.demand);
  for (const s of field.flameSensors) {
    const sent = () => (s.powered ? s.smoothMicroamps + s.noiseMicroamps : 0);
    signals.set(`${s.parameters.id}.signal`, sent);
  }
  return signals;
}

/** Everything that reads a signal over wires, by the name of the element that measures it. */
export function inputsOf(field: DevicesInWires): Map<string, AnalogueInput> {
  const inputs = new Map<string, AnalogueInput>();
  const readers = [
    ...field.transmitters,
    ...field.thermometers,
    ...field.levelProbes,
    ...field.airChangeCounters,
    ...field.servos,
    ...field.flameSensors,
  ];
  for (const { parameters, input } of readers) inputs.set(`ai.${parameters.id}`, input);
  for (const { parameters, valveInput } of field.feedControls) {
    inputs.set(`${parameters.id}.valve`, valveInput);
  }
  for (const { parameters, referenceInput, feedbackInput } of field.drives) {
    inputs.set(`${parameters.id}.reference`, referenceInput);
    inputs.set(`ai.${parameters.id}`, feedbackInput);
  }
  return inputs;
}
