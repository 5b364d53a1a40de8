/** The one place where the page's worker leans on what makes quiz items. */
import { INPUTS } from '../../../machines/burner/index.ts';
import { testPointsOf } from '../../bench/index.ts';
import { decodeAtlas, scripted } from '../../diagnosis/index.ts';
import { createRun, type RunEvent, type RunSetup } from '../../engine/index.ts';
import { soundSetup } from '../../judging/work/index.ts';
import {
  findWritten,
  type Item,
  makeItem,
  quizPlantOf,
  readItemId,
  setupOfRun,
} from '../../quiz/index.ts';
import type { LearnerLibrary } from '../../scenario/index.ts';
import type { StartEvent } from '../../wording/index.ts';
import type { MakePorts } from './make-host.ts';
import type { MadeItem } from './making-protocol.ts';

export function makePort(library: LearnerLibrary): Omit<MakePorts, 'post' | 'loadAtlas'> {
  const { quizzes } = library;
  const named = new Map<string, MadeItem['names']>();
  const soundOf = (plant: string) => soundSetup(library, plant);

  function namesOf(sound: RunSetup): MadeItem['names'] {
    const { plant } = sound;
    const known = named.get(plant.id);
    if (known !== undefined) return known;
    const names = {
      testPoints: [...testPointsOf(plant)],
      inputs: [...INPUTS],
      channels: createRun(sound).channels.map(({ id, kind }) => ({ id, kind })),
    };
    named.set(plant.id, names);
    return names;
  }

  return {
    soundOf,
    plantOf: (id) => readItemId(id)?.plant ?? findWritten(quizzes, id)?.item.plant ?? null,
    readyPlant(sound, atlasText) {
      const atlas = decodeAtlas(atlasText);
      if (atlas === null) throw new Error('not an atlas of this version');
      return quizPlantOf(sound, atlas);
    },
    make: (plants, id) => makeItem(plants, id, quizzes),
    about({ plant, run }: Item) {
      const sound = soundOf(plant);
      return {
        names: sound === null ? NO_NAMES : namesOf(sound),
        start: sound === null || run === null ? [] : startOf(sound, run),
      };
    },
  };
}

const NO_NAMES: MadeItem['names'] = { testPoints: [], inputs: [], channels: [] };

function startOf(sound: RunSetup, run: NonNullable<Item['run']>): StartEvent[] {
  const started = createRun(setupOfRun({ setup: scripted(sound) }, run));
  started.advanceTo(run.untilS);
  return started.events().flatMap(noted);
}

/** What the controller's own record has; what is wrong with the plant stands in no record. */
function noted(event: RunEvent): StartEvent[] {
  const { t } = event;
  switch (event.type) {
    case 'step':
      return [{ t, type: 'step', step: event.step }];
    case 'proved':
    case 'lost':
      return [{ t, type: event.type, what: event.what }];
    case 'lockout':
      return [{ t, type: 'lockout', cause: event.cause, step: event.step }];
    case 'reset':
      return [{ t, type: 'reset', count: event.count }];
    default:
      return [];
  }
}
