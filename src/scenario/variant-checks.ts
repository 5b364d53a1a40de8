import type { PlantFile } from '../engine/index.ts';
import type { Path } from './place.ts';

/** Where the start that a plant asks for needs a device that it does not have, or the reverse. */
export function checkVariant(plant: PlantFile): [Path, string][] {
  const { variant, gasTrain, field, ignition, flame } = plant;
  const shutoffs = gasTrain.edges.filter(({ kind }) => kind === 'shutoff');
  const has = (id: string) => shutoffs.some((edge) => edge.id === id);
  const wants = (condition: boolean, key: keyof typeof variant, code: string): [Path, string][] =>
    condition ? [] : [[['variant', key], code]];

  const proves = variant.valveProving !== 'none';
  const vent = shutoffs.find(({ id }) => id === 'vent-valve');
  const piloted = variant.ignition !== 'direct spark';
  const proofs = new Set(field.closedProofs.map(({ valve }) => valve));
  const driven = variant.fan === 'variable speed' ? 'variable speed' : 'fixed speed';
  return [
    ...wants(has('upstream-valve') && has('downstream-valve'), 'valveProving', 'main-valves'),
    ...wants(!proves || field.interspaceComparators.length > 0, 'valveProving', 'comparator'),
    ...wants((variant.vent === 'none') === (vent === undefined), 'vent', 'vent-valve'),
    ...wants(
      vent === undefined ||
        vent.kind !== 'shutoff' ||
        vent.normallyOpen === (variant.vent === 'normally open'),
      'vent',
      'vent-rest',
    ),
    ...wants(!variant.proofOfClosure || proofs.size === 2, 'proofOfClosure', 'closed-proofs'),
    ...wants(
      field.drives.some(({ kind }) => kind === driven),
      'fan',
      'drive',
    ),
    ...wants(piloted === has('pilot-valve'), 'ignition', 'pilot-valve'),
    ...wants(piloted === flame.hasPilot, 'ignition', 'pilot-flame'),
    ...wants(piloted === (ignition.sparkAt === 'pilot'), 'ignition', 'spark-place'),
  ];
}
