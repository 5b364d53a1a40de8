import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type AnalogueInput, createAnalogueInput } from './analogue-input.ts';
import type { ContactBoard } from './contact.ts';
import type { LevelProbe } from './level-probe.ts';
import {
  CONTACT_CONDITIONS,
  createSnapSwitch,
  prepareSnapSwitch,
  type SnapSwitch,
  stepSnapSwitch,
} from './snap-switch.ts';

/**
 * The feed water controller: what it asks of the feed valve, and whether the pump runs.
 *
 * Modulating: u = ½ + f·(steam/full − ½) − (level − setpoint)/band, 0…1: proportional to level, with
 * the share f of the feed set ahead by the steam flow, so that shrink and swell do not turn the
 * valve the wrong way. The pump always runs.
 * On-off: the pump starts at one level and stops at another; the valve is a plain check valve.
 * Left out: integral action (an offset by load stays), three-element cascade with feed flow.
 * Source: two-element feed-water control, any text on boiler control.
 */
export const modulatingFeedParameters = {
  id: name('name of the controller'),
  kind: choice(['modulating'], 'sets a feed valve'),
  probe: name('id of the level probe it listens to'),
  setpointM: number('m', -2, 2, 'level to hold at half load', 0),
  bandM: number('m', 0.02, 3, 'change of level that takes the valve from open to shut'),
  feedForward: number('1', 0, 1, 'share of the feed set by steam flow, not by level alone', 0),
  fullSteamKgS: number('kg/s', 0.005, 100, 'steam flow that asks for the whole feed'),
} as const satisfies ParameterTable;

export const onOffFeedParameters = {
  id: name('name of the controller'),
  kind: choice(['on-off'], 'starts and stops the feed pump'),
  probe: name('id of the level probe it listens to'),
  onM: number('m', -2, 2, 'pump starts at or below this level'),
  offM: number('m', -2, 2, 'pump stops at or above this level'),
  dwellS: number('s', 0, 60, 'how long before it follows, so that a wave does not', 2),
  contact: choice(
    CONTACT_CONDITIONS,
    'contact to the pump: welded stuck made, open stuck open',
    'sound',
  ),
} as const satisfies ParameterTable;

export type FeedControlParameters =
  | Values<typeof modulatingFeedParameters>
  | Values<typeof onOffFeedParameters>;

export interface FeedControl {
  readonly parameters: FeedControlParameters;
  readonly probe: LevelProbe;
  /** What arrives of the demand at the valve. */
  readonly valveInput: AnalogueInput;
  /** The pump's contact; always made where a valve does the work. */
  readonly pump: SnapSwitch;
  /** 0…1, to the feed valve. */
  demand: number;
}

/** @throws RangeError when `findFieldIssues` would have named a controller without its probe */
export function createFeedControl(
  parameters: FeedControlParameters,
  probes: readonly LevelProbe[],
  board: ContactBoard,
): FeedControl {
  const probe = probes.find(({ parameters: p }) => p.id === parameters.probe);
  if (probe === undefined) throw new RangeError(`no level probe named ${parameters.probe}`);
  const control: FeedControl = {
    parameters,
    probe,
    valveInput: createAnalogueInput(),
    pump: createSnapSwitch(board),
    demand: 0,
  };
  prepareFeedControl(control);
  return control;
}

const ALWAYS_BELOW_M = 1e6;

export function prepareFeedControl(control: FeedControl): void {
  const p = control.parameters;
  if (p.kind === 'on-off') {
    prepareSnapSwitch(control.pump, false, p.onM, p.offM, p.dwellS, false, p.contact);
  } else {
    prepareSnapSwitch(control.pump, false, ALWAYS_BELOW_M, 2 * ALWAYS_BELOW_M, 0, false, 'sound');
  }
}

export function stepFeedControl(control: FeedControl, steamKgS: number, stepS: number): void {
  const p = control.parameters;
  const levelM = control.probe.readingM;
  stepSnapSwitch(control.pump, levelM, false, stepS);
  if (p.kind === 'on-off') {
    control.demand = control.pump.contact.made ? 1 : 0;
    return;
  }
  const ahead = p.feedForward * (steamKgS / p.fullSteamKgS - 0.5);
  const wanted = 0.5 + ahead - (levelM - p.setpointM) / p.bandM;
  control.demand = Math.max(0, Math.min(1, wanted));
}
