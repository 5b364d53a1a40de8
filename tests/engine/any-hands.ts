/** Anything that hands can do at a plant, sensible or not: at its panel, its parts, dials and wires. */
import fc from 'fast-check';
import {
  type Action,
  describeWiring,
  type PlantFile,
  partsOf,
  settingsOf,
} from '../../src/engine/index.ts';

/** At the panel and the cocks. */
export function anyPanelAct(plant: PlantFile): fc.Arbitrary<Action> {
  const cocks = cocksOf(plant);
  return fc.oneof(
    fc.boolean().map((on): Action => ({ type: 'call-for-heat', on })),
    fc.boolean().map((pressed): Action => ({ type: 'reset', pressed })),
    fc.boolean().map((pressed): Action => ({ type: 'reset-limits', pressed })),
    fc.boolean().map((pressed): Action => ({ type: 'emergency-stop', pressed })),
    fc.boolean().map((on): Action => ({ type: 'supply', on })),
    fc.boolean().map((on): Action => ({ type: 'remote-enable', on })),
    fc.boolean().map((on): Action => ({ type: 'second-setpoint', on })),
    tenth().map((load): Action => ({ type: 'set-load', load })),
    fc
      .tuple(fc.constantFrom('automatic', 'hand', 'low fire'), tenth())
      .map(([mode, rate]): Action => ({ type: 'firing', mode, rate })),
    fc
      .tuple(fc.constantFrom(...cocks), tenth())
      .map(([cock, opening]): Action => ({ type: 'turn-cock', cock, opening })),
  );
}

/** With tools in hand: locks, repairs, dials anywhere in their range, jumpers, shafts by hand. */
export function anyWork(plant: PlantFile): fc.Arbitrary<Action> {
  const repairs = partsOf(plant).flatMap(({ part, ways }) =>
    ways.map((way): Action => ({ type: 'repair', part, way })),
  );
  const contacts = describeWiring(plant).elements.filter(({ kind }) => kind === 'contact');
  const points = ['isolator', ...cocksOf(plant)];
  return fc.oneof(
    fc
      .tuple(fc.constantFrom(...points), fc.boolean())
      .map(([point, on]): Action => ({ type: 'lock', point, on })),
    fc.constantFrom(...repairs),
    fc
      .tuple(fc.constantFrom(...settingsOf(plant)), tenth())
      .map(([{ part, setting, min, max }, share]): Action => {
        return { type: 'adjust', part, setting, value: min + (max - min) * share };
      }),
    fc
      .tuple(fc.constantFrom(...contacts), fc.boolean())
      .map(([{ from, to }, on]): Action => ({ type: 'jumper', from, to, on })),
    fc
      .tuple(fc.constantFrom(...plant.field.servos), fc.integer({ min: -1, max: 90 }))
      .map(([servo, deg]): Action => ({ type: 'stroke', servo: servo.id, deg })),
    fc.constant<Action>({ type: 'check', what: 'multimeter', place: 'earth', other: '' }),
  );
}

function cocksOf(plant: PlantFile): string[] {
  return plant.gasTrain.edges.flatMap(({ kind, id }) => (kind === 'cock' ? [id] : []));
}

function tenth(): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 10 }).map((n) => n / 10);
}
