/**
 * What a person can do to a run. An action log is a list of these with their times;
 * with the scenario and the seed it is the whole of a run.
 */
import { REPAIR_WAYS } from '../faults/index.ts';
import { choice, flag, name, number, type ParameterTable, type Values } from '../quantity/index.ts';

export const ACTION_TABLES = {
  'call-for-heat': { on: flag('the burner switch on the panel') },
  reset: { pressed: flag('the reset button; a deliberate reset is a press and a release') },
  'reset-limits': {
    pressed: flag('the reset on the limits that latch: high limit, second water cut-off'),
  },
  'emergency-stop': { pressed: flag('the emergency stop; latched until released') },
  supply: { on: flag('the mains isolator of the control panel') },
  'set-load': { load: number('1', 0, 1, 'share of rated steam or heat taken by the plant') },
  firing: {
    mode: choice(['automatic', 'hand', 'low fire'], 'who sets the firing rate'),
    rate: number('1', 0, 1, 'firing rate asked for by hand', 0),
  },
  'second-setpoint': { on: flag('the switch for the lower setpoint') },
  'remote-enable': { on: flag('the contact by which the building allows the burner') },
  'turn-cock': {
    cock: name('a manual cock of the gas train'),
    opening: number('1', 0, 1, '0 shut, 1 fully open'),
  },
  'insert-fault': {
    fault: name('a fault of the catalogue'),
    severity: number('1', -1e9, 1e9, "in the fault's own unit"),
  },
  'clear-fault': { fault: name('a fault that stands') },
  'ramp-fault': {
    fault: name('a fault of the catalogue'),
    severity: number('1', -1e9, 1e9, "where it ends, in the fault's own unit; 0: it is gone"),
    overS: number('s', 0, 3600, 'time it takes from where it stands to there'),
  },
  'intermittent-fault': {
    fault: name('a fault of the catalogue'),
    severity: number('1', -1e9, 1e9, "while it stands, in the fault's own unit"),
    periodS: number('s', 0.1, 3600, 'mean time from one coming to the next'),
    duty: number('1', 0, 1, 'share of the time that it stands'),
  },
  'set-weather': {
    temperatureC: number('°C', -40, 50, 'air in the boiler house and outdoors'),
    weatherPa: number('Pa', -6000, 5000, 'barometer over that of the standard atmosphere'),
    relativeHumidity: number('1', 0, 1, 'humidity of the air over that of saturated air'),
  },
  'set-gas-supply': {
    share: number('1', 0, 1.5, 'pressure in the gas main as a share of its usual; 0: no gas'),
  },
  'set-mains': { share: number('1', 0, 1.2, 'mains volts as a share of their usual') },
  lock: {
    point: name('`isolator`, or a manual cock of the gas train'),
    on: flag('a padlock holds the isolator off, a cock where it stands'),
  },
  repair: {
    part: name('a part that a person may act on'),
    way: choice(REPAIR_WAYS, 'what is done to it'),
  },
  adjust: {
    part: name('the part that has the dial'),
    setting: name('which of its settings'),
    value: number('1', -1e9, 1e9, "in the setting's own unit"),
  },
  jumper: {
    from: name('wire or terminal on one side of a contact'),
    to: name('wire or terminal on its other side'),
    on: flag('clipped on, or taken off again'),
  },
  stroke: {
    servo: name('a servo, by its name in the plant file'),
    deg: number('°', -1, 90, 'where the hand holds its motor; -1 lets go'),
  },
  check: {
    what: name('a tool connected, or a look taken'),
    place: name('where; empty when it has no place'),
    other: name('the other place of a tool with two leads; empty when none'),
  },
} as const satisfies Record<string, ParameterTable>;

export type ActionType = keyof typeof ACTION_TABLES;
export type Action = {
  [K in ActionType]: { readonly type: K } & Readonly<Values<(typeof ACTION_TABLES)[K]>>;
}[ActionType];

/** By which faults come, change and go by name, whatever hands do. */
export const FAULT_ACTS: readonly ActionType[] = [
  'insert-fault',
  'clear-fault',
  'ramp-fault',
  'intermittent-fault',
];
/** What nobody at the plant can do: an instructor does it to the plant. */
export const INSTRUCTOR_ACTS: readonly ActionType[] = [
  ...FAULT_ACTS,
  'set-weather',
  'set-gas-supply',
  'set-mains',
];

/** `t` in seconds from the start of the run; taken at the first step that is not before it. */
export type TimedAction = { readonly t: number } & Action;
