import { atlasFile, atlasFolder, readAtlas } from '../../../src/cli/atlas/files.ts';
import { soundSetup } from '../../../src/cli/sound-setup.ts';
import { type Atlas, type Decision, type Plan, planOf } from '../../../src/diagnosis/index.ts';
import { type Job, jobSetup } from '../../../src/scenario/index.ts';
import { library } from '../../support/library.ts';
import { robotAt } from '../../support/robot.ts';

const plans = new Map<string, Plan>();

export function jobOf(id: string): Job {
  const job = library.jobs.find((one) => one.id === id);
  if (job === undefined) throw new Error(`no job ${id}`);
  return job;
}

/** How the atlas goes about a plant; made once. */
export function planFor(plant: string): Plan {
  const known = plans.get(plant);
  if (known !== undefined) return known;
  const sound = soundSetup(library, plant);
  if (sound === null) throw new Error(`no sound start of ${plant}`);
  const plan = planOf(sound);
  plans.set(plant, plan);
  return plan;
}

export function shippedAtlas(plant: string): Atlas {
  const atlas = readAtlas(atlasFile(atlasFolder('.'), plant));
  if (atlas === null) throw new Error(`no atlas of ${plant}`);
  return atlas;
}

export function robotOn(id: string) {
  const setup = jobSetup(library, 'job', id);
  if (setup === null) throw new Error(`no job ${id}`);
  const plan = planFor(setup.plant.id);
  return { setup, plan, robot: robotAt(setup, plan) };
}

export function checksIn(decisions: readonly Decision[]) {
  return decisions.flatMap((one) => (one.kind === 'check' ? [one] : []));
}
export function watchesIn(decisions: readonly Decision[]) {
  return decisions.flatMap((one) => (one.kind === 'watch' ? [one] : []));
}

/** What one check told at one moment, by aspect. */
export function toldBy(
  decisions: readonly Decision[],
  check: string,
  moment: string,
): Record<string, number | string> {
  const readings = decisions.flatMap((one) =>
    'seen' in one ? one.seen.flatMap((seen) => (seen.moment === moment ? seen.readings : [])) : [],
  );
  return Object.fromEntries(
    readings.flatMap((one) => (one.check === check ? [[one.aspect, one.value]] : [])),
  );
}
