/**
 * What the plant shows by itself, without a tool: the controller's own display and lamps, the
 * instruments of the vessel. On a job a learner sees only these; pressures of gas and air, volts,
 * flame signal and flue gas need something to be connected, and the rest needs eyes.
 */
export const PANEL_CHANNELS: readonly string[] = [
  'logic.inputs',
  'logic.commands',
  'logic.step',
  'logic.target',
  'firing.rate',
  'damper.target',
  'damper.feedback',
  'fuel-valve.target',
  'fuel-valve.feedback',
  'fan.target',
  'fan.feedback',
  'furnace.air-changes',
  'vessel.pressure-shown',
  'vessel.temperature-shown',
  'vessel.level-shown',
  'vessel.load',
];
