import { type Atlas, type Plan, planOf, type Sample, sampleOfCase } from '../diagnosis/index.ts';
import type { RunSetup } from '../engine/index.ts';
import { type Job, jobSetup, type Library, type Phrase, phrase } from '../scenario/index.ts';
import { inQuotes } from './arguments.ts';
import { atlasFile, readAtlas } from './atlas/files.ts';
import type { Runnable } from './choose-scenario.ts';
import { soundSetup } from './sound-setup.ts';

/** An exercise as diagnosis takes it. */
export interface ExerciseCase {
  readonly id: string;
  readonly setup: RunSetup;
  readonly atlas: Atlas;
  readonly plan: Plan;
  /** Faults that are its cause; none: nothing is wrong. */
  readonly own: readonly string[];
  readonly tools: readonly string[] | 'all';
  readonly comesAndGoes: boolean;
  /** What every check reads of it, without what was mended. */
  truth(mended: readonly string[]): Sample;
}

export type ExerciseCases = (
  exercise: Pick<Runnable, 'id' | 'plant' | 'setup'>,
) =>
  | { readonly ok: true; readonly value: ExerciseCase }
  | { readonly ok: false; readonly mistake: Phrase };

/** Reads each atlas once. */
export function exerciseCases(library: Library, folder: string, command: string): ExerciseCases {
  const plants = new Map<string, { readonly atlas: Atlas; readonly plan: Plan } | null>();
  return ({ id, plant, setup: setupOf }) => {
    const known = plants.get(plant);
    const place = known === undefined ? plantIn(library, folder, plant) : known;
    plants.set(plant, place);
    const setup = setupOf({}, false);
    if (place === null || setup === null) {
      const params = { command, plant: inQuotes(plant), folder: inQuotes(folder) };
      return { ok: false, mistake: phrase('usage.no-atlas', params) };
    }
    const job = library.jobs.find((one) => one.id === id);
    const own = job?.cause ?? [...new Set(setup.faults.map(({ fault }) => fault))];
    const { atlas, plan } = place;
    const unknown = own.find((fault) => !atlas.causes.some((cause) => cause.fault === fault));
    if (unknown !== undefined) {
      const params = { command, plant: inQuotes(plant), fault: inQuotes(unknown) };
      return { ok: false, mistake: phrase('usage.not-in-atlas', params) };
    }
    const truth = (mended: readonly string[]) =>
      sampleOfCase(plan, {
        ...setup,
        faults: setup.faults.filter(({ fault }) => !mended.includes(fault)),
      });
    const comesAndGoes = setup.faults.some(({ onset }) => onset.kind === 'intermittent');
    const tools = job?.tools ?? 'all';
    return { ok: true, value: { id, setup, atlas, plan, own, tools, comesAndGoes, truth } };
  };
}

export function runnableJob(library: Library, { id, plant }: Job): Parameters<ExerciseCases>[0] {
  return { id, plant, setup: (choices) => jobSetup(library, 'job', id, choices) };
}

function plantIn(library: Library, folder: string, plant: string) {
  const atlas = readAtlas(atlasFile(folder, plant));
  const sound = soundSetup(library, plant);
  return atlas === null || sound === null ? null : { atlas, plan: planOf(sound) };
}
