import { z } from 'zod';
import { CAUSES, STEPS } from '../../machines/burner/index.ts';
import { number } from '../quantity/index.ts';
import { timeSchema } from './action-schema.ts';
import { MAX_RUN_S } from './bounds.ts';
import { EXPECTED } from './expectation.ts';
import { phrase } from './phrase.ts';
import { nameSchema, numberSchema } from './schema-from-table.ts';

export const MAX_FAULTS = 8;
export const MAX_LOAD_POINTS = 100;

export const stepSchema = z
  .enum(STEPS)
  .meta({ description: 'a step of the start, in its own words' });
const causeSchema = z.enum(CAUSES).meta({ description: 'a cause of a lockout, in its own words' });
export const shareSchema = (doc: string) => numberSchema(number('1', 0, 1, doc));
export const secondsSchema = (min: number, doc: string) =>
  numberSchema(number('s', min, MAX_RUN_S, doc));

const onset = z.union([
  z.literal('start'),
  z
    .strictObject({
      at: timeSchema('from this moment').optional(),
      step: stepSchema.optional(),
      intermittent: z
        .strictObject({
          from: timeSchema('first time it comes'),
          period: secondsSchema(0.1, 'from one coming to the next'),
          duty: shareSchema('share of the period in which it stands'),
        })
        .optional(),
    })
    .meta({ minProperties: 1, maxProperties: 1, description: 'one of at, step or intermittent' }),
]);

export const faultOrderSchema = z.strictObject({
  fault: nameSchema('a fault of the catalogue, see flamewright list faults').register(EXPECTED, {
    phrase: phrase('expected.fault'),
  }),
  severity: numberSchema(number('1', -1e9, 1e9, "in the fault's own unit")),
  onset: onset.default('start').meta({ description: 'when it comes' }),
});

export const initialSchema = z.strictObject({
  pressureBar: numberSchema(
    number('1', 0, 200, 'gauge pressure in a steam vessel, bar'),
  ).optional(),
  waterC: numberSchema(
    number('°C', 0, 250, 'water in the vessel: of a hot-water boiler, or of a cold steam boiler'),
  ).optional(),
  hour: numberSchema(number('1', 0, 24, "time of day, for the plant's clocks", 8)).default(8),
  levelMm: numberSchema(number('mm', -1000, 1000, 'water level from normal', 0)).default(0),
  load: shareSchema('share of rated load taken at the start').default(0),
});

export const expectationSchema = z.strictObject({
  reaches: stepSchema.optional().meta({ description: 'a step that must be entered' }),
  steps: z
    .array(stepSchema)
    .min(1)
    .max(STEPS.length * 4)
    .optional()
    .meta({ description: 'steps that must be passed in this order, others may lie between' }),
  lockout: z.union([z.literal('none'), z.strictObject({ cause: causeSchema, step: stepSchema })]),
  by: secondsSchema(0, 'all of it by this moment'),
});

export const loadPointSchema = z.strictObject({
  at: timeSchema('from this moment'),
  load: shareSchema('share of rated load'),
});

export type Expectation = z.output<typeof expectationSchema>;
export type FaultLine = z.output<typeof faultOrderSchema>;
