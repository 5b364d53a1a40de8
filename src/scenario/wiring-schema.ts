import { z } from 'zod';
import {
  bridgeParameters,
  cableParameters,
  controllerInputParameters,
  fuseParameters,
  jointParameters,
  loadParameters,
  siteContactParameters,
  sourceParameters,
} from '../field/index.ts';
import { EXPECTED } from './expectation.ts';
import { phrase } from './phrase.ts';
import { schemaFromTable } from './schema-from-table.ts';

const MAX_LISTED = 40;
const MAX_RUNGS = 150;
const MAX_RUNG = 41;

/** A wire, an element such as `fan-relay.coil`, or a terminal such as `fan-relay.coil:1`. */
export function placeSchema(doc: string): z.ZodString {
  return z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9 .:'-]*$/)
    .max(64)
    .meta({ description: doc })
    .register(EXPECTED, { phrase: phrase('expected.name') });
}

const listOf = <T extends z.ZodType>(one: T) => z.array(one).max(MAX_LISTED).prefault([]);

export const wiringSchema = z.strictObject({
  sources: z.array(schemaFromTable(sourceParameters)).min(1).max(MAX_LISTED),
  fuses: listOf(schemaFromTable(fuseParameters)),
  contacts: listOf(schemaFromTable(siteContactParameters)),
  loads: listOf(schemaFromTable(loadParameters)),
  controller: schemaFromTable(controllerInputParameters).prefault({} as never),
  cables: listOf(
    schemaFromTable(cableParameters, {
      wires: z.array(placeSchema('a wire of the cable')).min(1).max(MAX_LISTED),
    }),
  ),
  rungs: z
    .array(
      z
        .array(placeSchema('wire, element, wire, …, wire'))
        .min(3)
        .max(MAX_RUNG)
        .meta({ description: 'wire, element, wire, …, wire' }),
    )
    .min(1)
    .max(MAX_RUNGS),
  joints: listOf(
    schemaFromTable(jointParameters, { terminal: placeSchema('terminal with a bad joint') }),
  ),
  bridges: listOf(
    schemaFromTable(bridgeParameters, {
      from: placeSchema('a wire'),
      to: placeSchema('another wire, or earth'),
    }),
  ),
  swaps: listOf(
    z.strictObject({
      one: placeSchema('a terminal'),
      other: placeSchema('the one whose wire it has'),
    }),
  ),
});
