import { type ToolUse, testPointsOf } from '../../bench/index.ts';
import { createRun, type LookWhat, type PlantFile, type RunSetup } from '../../engine/index.ts';
import { type WirePlaces, wirePlacesOf } from '../observe/wire-readings.ts';

/** What is done with every particle of a plant: how it is started, what is connected. */
export interface Plan {
  /** A sound plant at rest; the script adds the call for heat. */
  readonly setup: RunSetup;
  /** When a sound plant comes into service, s. */
  readonly serviceS: number;
  /** A start that has come no further by then is left, s. */
  readonly untilS: number;
  readonly uses: readonly ToolUse[];
  readonly wires: WirePlaces;
}

/** So long a plant stands at rest first: what passes a seat or a joint has time to show, s. */
export const CALL_S = 60;
/** How long a burner in service and one that has locked out are watched, s. */
export const IN_SERVICE_S = 60;
export const AFTER_LOCKOUT_S = 20;
/** Longer than a sound start takes, so that the sequence has its own say first, s. */
const WAITS_S = 60;
const GIVE_UP_S = 900;
/** A manometer of the middle range ends here, Pa. */
const MIDDLE_PA = 18000;

/**
 * What moves or changes while a plant starts, and is looked at in every step. The rest is looked at
 * once, after the start.
 */
export const MOVING_LOOKS: readonly LookWhat[] = [
  'sight glass',
  'pilot flame',
  'spark',
  'upstream valve indicator',
  'downstream valve indicator',
  'vent valve indicator',
  'upstream valve proof switch',
  'downstream valve proof switch',
  'fuel valve shaft',
  'damper blade',
  'damper servo pointer',
  'fuel valve servo pointer',
  'purge end switch',
  'drive display',
  'belt',
  'fan rotation',
  'fan contactor',
  'gauge glass',
  'boiler gauge',
  'water pump',
  'feed valve',
  'safety valve',
  'control relays',
];

/** A sound plant with the script in place of whatever else was to happen. */
export function scripted(sound: RunSetup): RunSetup {
  return {
    ...sound,
    load: [],
    faults: [],
    actions: [{ t: CALL_S, type: 'call-for-heat', on: true }],
  };
}

/** @param sound a setup whose start, with nothing wrong, comes into service */
export function planOf(sound: RunSetup): Plan {
  const setup = scripted(sound);
  const { plant } = sound;
  const serviceS = secondsToService(setup);
  return {
    setup,
    serviceS,
    untilS: serviceS + IN_SERVICE_S + WAITS_S,
    uses: usesOf(plant),
    wires: wirePlacesOf(plant),
  };
}

function usesOf(plant: PlantFile): readonly ToolUse[] {
  return testPointsOf(plant).flatMap(({ id, tools }) =>
    tools.flatMap((tool): ToolUse[] => {
      if (tool === 'mirror and torch') return [];
      if (tool === 'multimeter') {
        return id === 'fan-motor-lead' ? [{ tool, place: id, range: 'amps' }] : [];
      }
      if (tool === 'manometer') return [{ tool, place: id, range: manometerRange(plant, id) }];
      if (tool === 'thermometer') {
        return [{ tool, place: id, range: id === 'casing' ? 'surface' : 'pocket' }];
      }
      return [{ tool, place: id }];
    }),
  );
}

function manometerRange({ gasTrain }: PlantFile, place: string): string {
  const node = gasTrain.nodes.find(({ id }) => id === place);
  if (node === undefined) return 'low';
  return node.startGaugePa > MIDDLE_PA ? 'high' : 'mid';
}

function secondsToService(setup: RunSetup): number {
  const run = createRun(setup, { keep: 'hash only' });
  while (run.timeS() < GIVE_UP_S && run.status().step !== 'modulation') {
    run.advanceTo(run.timeS() + 1);
  }
  return run.timeS();
}
