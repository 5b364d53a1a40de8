import { describe, expect, it } from 'vitest';
import type { GasTrainGraph } from '../../../src/view/schematic/plant.ts';
import { shapeOf } from '../../../src/view/schematic/train-graph.ts';
import { dairy, hotWater } from '../plants.ts';

const idsOf = (edges: readonly { readonly id: string }[]): string[] => edges.map(({ id }) => id);

describe('a gas train taken apart for drawing', () => {
  it('the main line runs from supply to furnace through the control valve', () => {
    expect(idsOf(shapeOf(dairy.gasTrain).main)).toEqual([
      'cock',
      'strainer',
      'regulator',
      'upstream-valve',
      'downstream-valve',
      'fuel-valve',
      'nozzle',
    ]);
  });

  it('what ends in the open is a vent, what ends in the furnace beside the main line a pilot', () => {
    const { vents, pilots } = shapeOf(dairy.gasTrain);
    expect(vents.map(({ node, edges }) => [node, ...idsOf(edges)])).toEqual([
      ['interspace', 'vent-valve'],
    ]);
    expect(pilots.map(({ node, edges }) => [node, ...idsOf(edges)])).toEqual([
      ['regulated', 'pilot-valve', 'pilot-regulator', 'pilot-orifice'],
    ]);
  });

  it('a train without vent and pilot has no branches', () => {
    const { vents, pilots } = shapeOf(hotWater.gasTrain);
    expect([vents, pilots]).toEqual([[], []]);
  });

  it('a pilot line longer than the main line does not become the main line', () => {
    const edges: GasTrainGraph['edges'] = [
      { id: 'valve', kind: 'shutoff', from: 'supply', to: 'a' },
      { id: 'control', kind: 'control', from: 'a', to: 'furnace' },
      { id: 'p1', kind: 'shutoff', from: 'a', to: 'p' },
      { id: 'p2', kind: 'regulator', from: 'p', to: 'q' },
      { id: 'p3', kind: 'orifice', from: 'q', to: 'furnace' },
    ];
    const { main, pilots } = shapeOf({ nodes: [], edges });
    expect(idsOf(main)).toEqual(['valve', 'control']);
    expect(idsOf(pilots[0].edges)).toEqual(['p1', 'p2', 'p3']);
  });
});
