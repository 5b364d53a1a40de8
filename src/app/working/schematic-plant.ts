import library from 'virtual:library';
import type { PlantFile } from '../../engine/index.ts';
import type { SchematicPlant } from '../../view/index.ts';

const SENSOR_WORDS = { uv: 'UV', ir: 'IR', ionisation: 'ionisation' } as const;

/** A plant of the shipped library; the facts of a run name no other. */
export function plantOfLibrary(id: string): SchematicPlant {
  const plant = library.plants.find((each) => each.id === id);
  if (plant === undefined) throw new Error(`no plant ${id}`);
  return schematicPlant(plant);
}

/** The part of a plant file that the drawing is made from. */
function schematicPlant(plant: PlantFile): SchematicPlant {
  const { gasTrain, field, variant } = plant;
  const sensor = field.flameSensors[0];
  return {
    id: plant.id,
    title: plant.title,
    gasTrain: {
      nodes: gasTrain.nodes.map(({ id }) => ({ id })),
      edges: gasTrain.edges.map((edge) => ({
        id: edge.id,
        kind: edge.kind,
        from: edge.from,
        to: edge.to,
        ...(edge.kind === 'shutoff' ? { normallyOpen: edge.normallyOpen } : {}),
      })),
    },
    hasValveProving: variant.valveProving !== 'none',
    hasOneServo: field.servos.some(({ moves }) => moves === 'damper and fuel valve'),
    hasBelt: field.drives.some(({ beltRatio }) => beltRatio !== undefined && beltRatio !== 1),
    ratedGasKgS: plant.flame.ratedMainKgS,
    hasVariableSpeedFan: variant.fan === 'variable speed',
    hasPilot: variant.ignition !== 'direct spark',
    hasProofOfClosure: variant.proofOfClosure,
    vesselKind: plant.vessel.kind,
    sensorKind: sensor === undefined ? '' : SENSOR_WORDS[sensor.kind],
  };
}
