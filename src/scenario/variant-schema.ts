import { z } from 'zod';
import type { Variant } from '../../machines/burner/index.ts';

const words = <T extends string>(options: readonly [T, ...T[]], description: string) =>
  z.enum(options).meta({ description });

/** Which start the one machine runs on this plant. */
export const variantSchema = z.strictObject({
  valveProving: words(
    ['before start', 'after run-down', 'none'],
    'when the valves are proved tight',
  ),
  vent: words(
    ['none', 'proving', 'normally open'],
    'a vent valve between the main valves: shut at rest and opened for proving, or open at rest',
  ),
  proofOfClosure: z.boolean().meta({ description: 'the main valves report that they are shut' }),
  fan: words(['fixed speed', 'variable speed'], 'how the fan is driven'),
  ignition: words(
    ['interrupted pilot', 'intermittent pilot', 'direct spark'],
    'what lights the main flame, and whether the pilot stays',
  ),
}) satisfies z.ZodType<Variant>;
