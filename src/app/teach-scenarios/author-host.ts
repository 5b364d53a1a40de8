/** The worker's side of writing files: what plants have, what is wrong with a text, what it can be told by. */
import { describeStep, STEPS } from '../../../machines/burner/index.ts';
import { faultsFor, type PlantFile, partsOf, settingsOf } from '../../engine/index.ts';
import { jsonSchemas, type LearnerLibrary } from '../../scenario/index.ts';
import type { AuthorKind } from './author-kinds.ts';
import {
  type AuthorFacts,
  type AuthorPlant,
  type AuthorQuestion,
  type FromAuthor,
  toAuthorSchema,
} from './author-protocol.ts';
import { checkFile } from './check-file.ts';
import type { FileSchema } from './file-schema.ts';

export interface AuthorPorts {
  readonly library: LearnerLibrary;
  post(message: FromAuthor): void;
  /** Null where the plant has no atlas; throws where it cannot be fetched. */
  loadAtlas(folder: string, plant: string): Promise<string | null>;
}

export interface AuthorHost {
  /** Settled when the answer is posted. */
  receive(message: unknown): Promise<void>;
}

const SCHEMA_FILES: Readonly<Record<AuthorKind, string>> = {
  start: 'scenario.json',
  job: 'job.json',
  lesson: 'lesson.json',
  drill: 'drill.json',
  quiz: 'quiz.json',
};

export function createAuthorHost({ library, post, loadAtlas }: AuthorPorts): AuthorHost {
  async function answer(what: AuthorQuestion): Promise<unknown> {
    switch (what.of) {
      case 'facts':
        return factsOf(library);
      case 'check':
        return checkFile(what.kind, what.text, library).checked;
      case 'diagnose': {
        const { diagnoseFile } = await import('./diagnose-file.ts');
        const load = (plant: string) => loadAtlas(what.atlases, plant);
        return diagnoseFile(what.kind, what.text, library, load);
      }
    }
  }
  return {
    async receive(message) {
      const parsed = toAuthorSchema.safeParse(message);
      const ask = (message as { readonly ask?: unknown } | null)?.ask;
      const number = typeof ask === 'number' ? ask : 0;
      try {
        if (!parsed.success) throw parsed.error;
        const given = await answer(parsed.data.what);
        post({ type: 'authored', ask: number, answer: given, trouble: null });
      } catch (error) {
        const trouble = error instanceof Error ? error.message : String(error);
        post({ type: 'authored', ask: number, answer: null, trouble });
      }
    },
  };
}

export function factsOf(library: LearnerLibrary): AuthorFacts {
  const texts = jsonSchemas();
  const schemaOf = (kind: AuthorKind) =>
    JSON.parse(texts[SCHEMA_FILES[kind]] ?? '{}') as FileSchema;
  return {
    schemas: {
      start: schemaOf('start'),
      job: schemaOf('job'),
      lesson: schemaOf('lesson'),
      drill: schemaOf('drill'),
      quiz: schemaOf('quiz'),
    },
    plants: library.plants.map((plant) => plantFacts(plant, library)),
    profiles: library.profiles.map(({ id, title }) => ({ id, title })),
  };
}

function plantFacts(plant: PlantFile, library: LearnerLibrary): AuthorPlant {
  const sound = library.scenarios.find((one) => one.plant === plant.id && one.faults.length === 0);
  return {
    id: plant.id,
    title: plant.title,
    isHotWater: plant.vessel.kind === 'hot water',
    faults: faultsFor(plant).map(({ id, family, component, mechanism, severity, onsets }) => {
      const { means, unit, low, high, typical } = severity;
      return { id, family, component, mechanism, means, unit, low, high, typical, onsets };
    }),
    parts: partsOf(plant).map(({ part, ways }) => ({ part, ways })),
    settings: settingsOf(plant).map(({ part, setting, unit, min, max }) => ({
      part,
      setting,
      unit,
      min,
      max,
    })),
    cocks: plant.gasTrain.edges.filter(({ kind }) => kind === 'cock').map(({ id }) => id),
    servos: plant.field.servos.map(({ id }) => id),
    steps: STEPS.filter((step) => describeStep(step, plant.variant) !== undefined),
    sound:
      sound === undefined
        ? null
        : { initial: sound.initial, actions: sound.actions, until: sound.until },
  };
}
