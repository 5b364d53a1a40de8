import { describe, expect, it } from 'vitest';
import {
  checkUse,
  createToolState,
  readTool,
  TOOLS,
  type ToolUse,
  testPointsOf,
} from '../../../src/bench/index.ts';
import { createRun, describeWiring, LOOK_WHATS } from '../../../src/engine/index.ts';
import { sayMessage } from '../../../src/i18n/index.ts';
import { shippedSetup } from '../../support/library.ts';

const STARTS = ['laundry-healthy-start', 'healthy-start', 'school-healthy-start'];

describe.each(STARTS)('the test points of the plant of %s', (start) => {
  const setup = shippedSetup(start);
  const points = testPointsOf(setup.plant);
  const run = createRun(setup);
  run.advanceTo(20);

  it('have each a name of their own and a label that speaks', () => {
    expect(new Set(points.map(({ id }) => id)).size).toBe(points.length);
    for (const { label } of points) expect(sayMessage(label)).not.toMatch(/[{}]/);
  });

  it('are every node of the train, every wire and both terminals of every element', () => {
    const ids = new Set(points.map(({ id }) => id));
    const { wires, elements } = describeWiring(setup.plant);
    for (const { id } of setup.plant.gasTrain.nodes) expect(ids).toContain(id);
    for (const wire of wires) expect(ids).toContain(wire);
    for (const { name } of elements) {
      expect(ids).toContain(`${name}:1`);
      expect(ids).toContain(`${name}:2`);
    }
  });

  it('give a reading to every tool that they are for, in every range that connects', () => {
    let readings = 0;
    for (const point of points) {
      for (const id of point.tools) {
        const tool = TOOLS.find((one) => one.id === id);
        for (const range of tool?.ranges.length ? tool.ranges.map((one) => one.id) : [undefined]) {
          const needsOther = id === 'multimeter' && range !== 'amps';
          const use: ToolUse = {
            tool: id,
            place: point.id,
            ...(range !== undefined && { range }),
            ...(needsOther && { other: point.id === 'N' ? 'L' : 'N' }),
          };
          if (checkUse(setup.plant, use) !== null) continue;
          const reading = readTool(run, use, createToolState(use, 0));
          readings += 1;
          // A shaft at rest gives a strobe nothing to see; everything else is there to be read.
          if (id !== 'strobe') expect([use, reading.flags]).not.toEqual([use, ['no signal']]);
        }
      }
    }
    expect(readings).toBeGreaterThan(400);
  });

  it('let mirror and torch see only what is there', () => {
    const places = new Set<string>(run.lookPlaces());
    for (const { id, tools } of points) {
      if (tools.includes('mirror and torch')) expect(places).toContain(id);
    }
    expect(LOOK_WHATS.length).toBeGreaterThan(20);
  });
});
