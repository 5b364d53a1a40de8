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

/** `t` in seconds from the start of the run; taken at the first step that is not before it. */
export type TimedAction = { readonly t: number } & Action;
