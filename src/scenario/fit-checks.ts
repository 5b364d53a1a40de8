import type { PlantFile } from '../engine/index.ts';
import type { Signal } from '../field/index.ts';
import type { Path } from './place.ts';

/** The points of a gas train that instruments may stand at. */
const POINTS: Partial<Record<Signal, string>> = {
  'regulated gas': 'regulated',
  interspace: 'interspace',
  'manifold gas': 'manifold',
};

/** Where an instrument stands at a point that the train does not have, or one shaft is told two angles. */
export function checkFit({ gasTrain, field, control }: PlantFile): [Path, string][] {
  const found: [Path, string][] = [];
  const nodes = new Set(gasTrain.nodes.map(({ id }) => id));
  for (const list of ['switches', 'transmitters'] as const) {
    field[list].forEach(({ senses }, i) => {
      const point = POINTS[senses];
      if (point !== undefined && !nodes.has(point)) {
        found.push([['field', list, i, 'senses'], `point-${point}`]);
      }
    });
  }
  if (field.interspaceComparators.length > 0 && !nodes.has('interspace')) {
    found.push([['field', 'interspaceComparators', 0], 'point-interspace']);
  }
  if (!field.servos.some(({ moves }) => moves === 'damper and fuel valve')) return found;
  const { points, curve } = control;
  if (points.lightOffFuelValveDeg !== points.lightOffDamperDeg) {
    found.push([['control', 'points', 'lightOffFuelValveDeg'], 'one-shaft']);
  }
  const apart = curve.fuelValveDeg.findIndex((deg, i) => deg !== curve.damperDeg[i]);
  if (apart >= 0) found.push([['control', 'curve', 'fuelValveDeg', apart], 'one-shaft']);
  return found;
}
