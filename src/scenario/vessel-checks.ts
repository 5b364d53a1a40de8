import type { PlantFile } from '../engine/index.ts';
import type { Path } from './place.ts';

/** Where the devices of a plant do not fit the vessel that they are to keep. */
export function checkVessel({ vessel, field, control }: PlantFile): [Path, string][] {
  const found: [Path, string][] = [];
  const { firingRate } = control;
  if (vessel.kind === 'hot water') {
    if (firingRate.kind !== 'temperature') {
      found.push([['control', 'firingRate', 'kind'], 'temperature-control']);
    }
    const none = (list: readonly unknown[], key: string) => {
      if (list.length > 0) found.push([['field', key, 0], 'no-level']);
    };
    none(field.levelProbes, 'levelProbes');
    none(field.waterCutOffs, 'waterCutOffs');
    none(field.feedControls, 'feedControls');
    return found;
  }
  if (firingRate.kind !== 'pressure') {
    found.push([['control', 'firingRate', 'kind'], 'pressure-control']);
  }
  if (field.feedControls.length === 0) found.push([['field'], 'feed-control']);
  for (const list of ['temperatureSwitches', 'thermometers'] as const) {
    field[list].forEach((one, i) => {
      if (one.senses === 'return temperature')
        found.push([['field', list, i, 'senses'], 'no-return']);
    });
  }
  return found;
}
