import type { SchematicPlant } from '../../src/view/index.ts';

const edge = (
  id: string,
  kind: SchematicPlant['gasTrain']['edges'][number]['kind'],
  from: string,
  to: string,
) => ({ id, kind, from, to });

/** The shapes of the three plants: everything; no drive, open vent; one servo, no vent, no pilot. */
export const dairy: SchematicPlant = {
  id: 'dairy',
  title: 'Dairy, boiler 2',
  gasTrain: {
    nodes: [
      'strainer-inlet',
      'inlet',
      'regulated',
      'interspace',
      'manifold',
      'nozzle-inlet',
      'pilot-inlet',
      'pilot',
    ].map((id) => ({ id })),
    edges: [
      edge('cock', 'cock', 'supply', 'strainer-inlet'),
      edge('strainer', 'strainer', 'strainer-inlet', 'inlet'),
      edge('regulator', 'regulator', 'inlet', 'regulated'),
      edge('upstream-valve', 'shutoff', 'regulated', 'interspace'),
      edge('vent-valve', 'shutoff', 'interspace', 'atmosphere'),
      edge('downstream-valve', 'shutoff', 'interspace', 'manifold'),
      edge('fuel-valve', 'control', 'manifold', 'nozzle-inlet'),
      edge('nozzle', 'orifice', 'nozzle-inlet', 'furnace'),
      edge('pilot-valve', 'shutoff', 'regulated', 'pilot-inlet'),
      edge('pilot-regulator', 'regulator', 'pilot-inlet', 'pilot'),
      edge('pilot-orifice', 'orifice', 'pilot', 'furnace'),
    ],
  },
  hasVariableSpeedFan: true,
  hasPilot: true,
  hasProofOfClosure: true,
  hasValveProving: true,
  vesselKind: 'water-tube',
  sensorKind: 'IR',
};

export const fireTube: SchematicPlant = {
  ...dairy,
  id: 'fire-tube',
  gasTrain: {
    nodes: dairy.gasTrain.nodes,
    edges: dairy.gasTrain.edges.map((each) =>
      each.id === 'vent-valve' ? { ...each, normallyOpen: true } : each,
    ),
  },
  hasVariableSpeedFan: false,
  hasBelt: true,
  hasValveProving: false,
  hasProofOfClosure: false,
  vesselKind: 'fire-tube',
  sensorKind: 'UV',
};

export const hotWater: SchematicPlant = {
  ...dairy,
  id: 'hot-water',
  gasTrain: {
    nodes: dairy.gasTrain.nodes.filter(({ id }) => !id.startsWith('pilot')),
    edges: dairy.gasTrain.edges.filter(({ id }) => !/^(pilot|vent)/.test(id)),
  },
  hasVariableSpeedFan: false,
  hasPilot: false,
  hasOneServo: true,
  vesselKind: 'hot water',
  sensorKind: 'ionisation',
};
