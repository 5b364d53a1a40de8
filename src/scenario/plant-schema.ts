import { z } from 'zod';
import type { PlantFile } from '../engine/index.ts';
import { CONTROL_SECTIONS, FIELD_SECTIONS, type Section } from '../field/index.ts';
import {
  ambientParameters,
  damperParameters,
  fanParameters,
  passageParameters,
  stackParameters,
} from '../plant/air/index.ts';
import { flameParameters, ignitionParameters } from '../plant/flame/index.ts';
import { furnaceParameters } from '../plant/furnace/index.ts';
import {
  gasEdgeTables,
  gasNodeParameters,
  gasSupplyParameters,
  gasTrainNumbers,
  mixtureParameters,
} from '../plant/gas/index.ts';
import { vesselTables } from '../plant/vessel/index.ts';
import type { ParameterTable } from '../quantity/index.ts';
import { nameSchema, schemaFromTable } from './schema-from-table.ts';
import { idSchema, paragraphSchema, titleSchema } from './text-schemas.ts';
import { variantSchema } from './variant-schema.ts';
import { wiringSchema } from './wiring-schema.ts';

const MAX_DEVICES = 40;

const gasEdges = Object.entries(gasEdgeTables).map(([kind, table]) =>
  schemaFromTable(table as ParameterTable, {
    id: nameSchema('name of this path'),
    kind: z.literal(kind),
    from: nameSchema('the point it leaves'),
    to: nameSchema('the point it goes to; flow this way counts as forward'),
  }),
);

const vessels = Object.entries(vesselTables).map(([kind, table]) =>
  schemaFromTable(table as ParameterTable, { kind: z.literal(kind) }),
);

const gasTrainSchema = schemaFromTable(gasTrainNumbers, {
  mixture: schemaFromTable(mixtureParameters),
  supply: schemaFromTable(gasSupplyParameters),
  nodes: z
    .array(schemaFromTable(gasNodeParameters, { id: nameSchema('name of this point') }))
    .min(1)
    .max(MAX_DEVICES),
  edges: z
    .array(z.discriminatedUnion('kind', gasEdges as never))
    .min(1)
    .max(MAX_DEVICES),
});

const airPathSchema = z.strictObject({
  fan: schemaFromTable(fanParameters),
  damper: schemaFromTable(damperParameters),
  passages: schemaFromTable(passageParameters),
  stack: schemaFromTable(stackParameters),
});

/** One thing or a list of them; a device left out of a plant leaves its list empty. */
function sectionSchema({ tables, list }: Section): z.ZodType {
  const [first, ...others] = tables.map((table) => schemaFromTable(table));
  if (first === undefined) throw new Error('a section without a table');
  const one =
    others.length === 0 ? first : z.discriminatedUnion('kind', [first, ...others] as never);
  return list ? z.array(one).max(MAX_DEVICES).default([]) : one;
}

function sectionsSchema(sections: Readonly<Record<string, Section>>): z.ZodType {
  return z.strictObject(
    Object.fromEntries(
      Object.entries(sections).map(([name, section]) => [name, sectionSchema(section)]),
    ),
  );
}

/** A plant file: every component by its own table, and what the machine is told of the plant. */
export const plantSchema = z
  .strictObject({
    id: idSchema('the name of the plant'),
    title: titleSchema('what a list shows'),
    description: paragraphSchema('what kind of plant it is'),
    profile: idSchema('the practice profile it is run by'),
    variant: variantSchema,
    ambient: schemaFromTable(ambientParameters),
    gasTrain: gasTrainSchema,
    airPath: airPathSchema,
    furnace: schemaFromTable(furnaceParameters),
    ignition: schemaFromTable(ignitionParameters),
    flame: schemaFromTable(flameParameters),
    vessel: z.discriminatedUnion('kind', vessels as never),
    field: sectionsSchema(FIELD_SECTIONS),
    wiring: wiringSchema,
    control: sectionsSchema(CONTROL_SECTIONS),
  })
  .meta({ title: 'Flamewright plant' }) as unknown as z.ZodType<PlantFile>;
