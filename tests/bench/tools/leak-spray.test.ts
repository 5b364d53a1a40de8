import { describe, expect, it } from 'vitest';
import { createToolState, readTool, type ToolUse } from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { toyRun } from './toy-run.ts';

const use: ToolUse = { tool: 'leak spray', place: 'regulated' };
const read = (kgS: number, pa: number, frames = 80) =>
  readTool(
    toyRun({
      channels: { 'gas.regulated.pressure': () => pa },
      frames,
      look: {
        what: 'gas joints',
        values: { inlet: 1e-3, regulated: kgS },
        words: [],
        needsOpening: false,
      },
    }),
    use,
    createToolState(use, 0),
  );

describe('leak spray', () => {
  it.each([
    [0, 'bench.note.spray-none'],
    [5e-9, 'bench.note.spray-none'],
    [5e-8, 'bench.note.spray-slow'],
    [3e-6, 'bench.note.spray-quick'],
    [2e-5, 'bench.note.spray-blown'],
  ])('where %d kg/s escapes says %s, whatever the joints elsewhere do', (kgS, code) => {
    expect(read(kgS, 5000)).toMatchObject({ note: { code }, steady: true, flags: [] });
  });

  it('has to be watched before it says anything', () => {
    expect(read(3e-6, 5000, 30)).toMatchObject({
      note: { code: 'bench.note.spray-watch' },
      steady: false,
      flags: ['settling'],
    });
  });

  it('says that nothing seen means nothing where there is no pressure', () => {
    expect(read(0, 100)).toMatchObject({
      note: { code: 'bench.note.spray-no-pressure' },
      flags: ['no pressure'],
    });
  });
});

describe('leak spray on the laundry at rest', () => {
  /** A joint behind the regulator that lets this much out at 100 mbar, dm³/h. */
  function atRest(escapeDm3H: number) {
    const setup = shippedSetup('laundry-healthy-start');
    const { gasTrain } = setup.plant;
    const nodes = gasTrain.nodes.map((node) =>
      node.id === 'regulated' ? { ...node, escapeDm3H } : node,
    );
    const plant = { ...setup.plant, gasTrain: { ...gasTrain, nodes } };
    const run = createRun({ ...setup, plant, actions: [] });
    run.advanceTo(10);
    return (place: string) => {
      const on: ToolUse = { tool: 'leak spray', place };
      return readTool(run, on, createToolState(on, 0)).note?.code;
    };
  }

  it('bubbles at the joint that leaks and at no other', () => {
    const spray = atRest(30);
    expect(spray('regulated')).toBe('bench.note.spray-quick');
    expect(spray('inlet')).toBe('bench.note.spray-none');
    // Behind a shut valve with an open vent there is nothing to blow a bubble.
    expect(spray('interspace')).toBe('bench.note.spray-no-pressure');
  });

  it('does not see a leak below what makes a bubble', () => {
    expect(atRest(0.02)('regulated')).toBe('bench.note.spray-none');
    expect(atRest(0.5)('regulated')).toBe('bench.note.spray-slow');
  });
});
