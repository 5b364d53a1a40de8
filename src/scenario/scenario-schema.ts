import { z } from 'zod';
import { CAUSES, STEPS } from '../../machines/burner/index.ts';
import { number } from '../quantity/index.ts';
import { ACTION_TYPES, MAX_ACTIONS, scriptedActionSchema, timeSchema } from './action-schema.ts';
import { MAX_RUN_S, MAX_SEED } from './bounds.ts';
import { EXPECTED } from './expectation.ts';
import { phrase } from './phrase.ts';
import { nameSchema, numberSchema } from './schema-from-table.ts';
import { idSchema, paragraphSchema, titleSchema } from './text-schemas.ts';

const MAX_FAULTS = 8;
const MAX_LOAD_POINTS = 100;

const step = z.enum(STEPS).meta({ description: 'a step of the start, in its own words' });
const cause = z.enum(CAUSES).meta({ description: 'a cause of a lockout, in its own words' });
const share = (doc: string) => numberSchema(number('1', 0, 1, doc));
const seconds = (min: number, doc: string) => numberSchema(number('s', min, MAX_RUN_S, doc));

const onset = z.union([
  z.literal('start'),
  z
    .strictObject({
      at: timeSchema('from this moment').optional(),
      step: step.optional(),
      intermittent: z
        .strictObject({
          from: timeSchema('first time it comes'),
          period: seconds(0.1, 'from one coming to the next'),
          duty: share('share of the period in which it stands'),
        })
        .optional(),
    })
    .meta({ minProperties: 1, maxProperties: 1, description: 'one of at, step or intermittent' }),
]);

const faultOrder = z.strictObject({
  fault: nameSchema('a fault of the catalogue, see flamewright list faults').register(EXPECTED, {
    phrase: phrase('expected.fault'),
  }),
  severity: numberSchema(number('1', -1e9, 1e9, "in the fault's own unit")),
  onset: onset.default('start').meta({ description: 'when it comes' }),
});

const initial = z.strictObject({
  pressureBar: numberSchema(
    number('1', 0, 200, 'gauge pressure in a steam vessel, bar'),
  ).optional(),
  waterC: numberSchema(
    number('°C', 0, 250, 'water in the vessel: of a hot-water boiler, or of a cold steam boiler'),
  ).optional(),
  hour: numberSchema(number('1', 0, 24, "time of day, for the plant's clocks", 8)).default(8),
  levelMm: numberSchema(number('mm', -1000, 1000, 'water level from normal', 0)).default(0),
  load: share('share of rated load taken at the start').default(0),
});

const expectation = z.strictObject({
  reaches: step.optional().meta({ description: 'a step that must be entered' }),
  steps: z
    .array(step)
    .min(1)
    .max(STEPS.length * 4)
    .optional()
    .meta({ description: 'steps that must be passed in this order, others may lie between' }),
  lockout: z.union([z.literal('none'), z.strictObject({ cause, step })]),
  by: seconds(0, 'all of it by this moment'),
});

const loadPoint = z.strictObject({
  at: timeSchema('from this moment'),
  load: share('share of rated load'),
});

export const scenarioSchema = z
  .strictObject({
    id: idSchema('the name of the scenario'),
    title: titleSchema('what a list shows'),
    plant: idSchema('the plant it runs on'),
    profile: idSchema("a practice profile other than the plant's own").optional(),
    summary: paragraphSchema('what is going on'),
    teaches: paragraphSchema('what someone understands afterwards').optional(),
    caution: paragraphSchema('what could hurt someone if this were a real plant').optional(),
    seed: z.int().min(0).max(MAX_SEED).default(1).meta({ description: 'seed of all chance' }),
    initial,
    load: z.array(loadPoint).max(MAX_LOAD_POINTS).default([]),
    faults: z.array(faultOrder).max(MAX_FAULTS).default([]),
    allow: z
      .array(z.enum(ACTION_TYPES))
      .max(ACTION_TYPES.length)
      .default([...ACTION_TYPES])
      .meta({ description: 'what a learner may do' }),
    actions: z.array(scriptedActionSchema).max(MAX_ACTIONS).default([]),
    until: seconds(1, 'the run ends here'),
    expect: expectation.meta({ description: 'what the tests hold this scenario to' }),
  })
  .meta({ title: 'Flamewright scenario' });

export type Scenario = z.output<typeof scenarioSchema>;
export type Expectation = Scenario['expect'];
export type FaultLine = Scenario['faults'][number];
