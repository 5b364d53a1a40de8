import { decodeAtlas, diagnoseCase, planOf, sampleOfCase } from '../../diagnosis/index.ts';
import { createRun, type RunSetup } from '../../engine/index.ts';
import { soundSetup } from '../../judging/work/index.ts';
import { jobSetup, type LearnerLibrary, type Library, setupOf } from '../../scenario/index.ts';
import { namesOfPlant } from '../../wording/index.ts';
import type { AuthorKind } from './author-kinds.ts';
import type { DiagnosisTrouble, FileDiagnosed } from './author-protocol.ts';
import { checkFile } from './check-file.ts';

/** What a file can be told by, what cannot be told from it and how hard that is: as the command line has it. */
export async function diagnoseFile(
  kind: AuthorKind,
  text: string,
  shipped: LearnerLibrary,
  loadAtlas: (plant: string) => Promise<string | null>,
): Promise<FileDiagnosed> {
  const { library } = checkFile(kind, text, shipped);
  const setup = library === null ? null : setupIn(kind, library);
  if (library === null || setup === null) return refused('not in order');
  const plant = setup.plant.id;
  const sound = soundSetup(shipped, plant);
  let packed: string | null;
  try {
    packed = await loadAtlas(plant);
  } catch (error) {
    return refused('atlas not loaded', error instanceof Error ? error.message : String(error));
  }
  const atlas = packed === null ? null : decodeAtlas(packed);
  if (atlas === null || sound === null) return refused('no atlas', plant);
  const [job] = kind === 'job' ? library.jobs : [];
  const [drill] = kind === 'drill' ? library.drills : [];
  const own = job?.cause ?? [...new Set(setup.faults.map(({ fault }) => fault))];
  const unknown = own.find((fault) => !atlas.causes.some((cause) => cause.fault === fault));
  if (unknown !== undefined) return refused('not in atlas', unknown);
  const plan = planOf(sound);
  const comesAndGoes = setup.faults.some(({ onset }) => onset.kind === 'intermittent');
  const found = diagnoseCase({
    atlas,
    truth: (mended) =>
      sampleOfCase(plan, {
        ...setup,
        faults: setup.faults.filter(({ fault }) => !mended.includes(fault)),
      }),
    own,
    tools: (job ?? drill)?.tools ?? 'all',
    comesAndGoes,
  });
  const names = namesOfPlant(setup.plant, createRun(setup).channels);
  const level = job?.level ?? null;
  return { ok: true, found, causes: own.length, comesAndGoes, level, names };
}

function setupIn(kind: AuthorKind, library: Library): RunSetup | null {
  if (kind === 'job' || kind === 'drill') {
    const [exercise] = kind === 'job' ? library.jobs : library.drills;
    const found = exercise === undefined ? null : jobSetup(library, kind, exercise.id);
    if (found === null) return null;
    const { arriveAt: _, ...setup } = found;
    return setup;
  }
  const [start] = kind === 'start' ? library.scenarios : [];
  return start === undefined ? null : setupOf(library, start.id);
}

function refused(trouble: DiagnosisTrouble, detail = ''): FileDiagnosed {
  return { ok: false, trouble, detail };
}
