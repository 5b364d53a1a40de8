import { describe, expect, it } from 'vitest';
import { testPointsOf } from '../../../src/bench/index.ts';
import { message } from '../../../src/i18n/index.ts';
import { indexChannels } from '../../../src/view/channels.ts';
import { siReading } from '../../../src/view/reading.ts';
import { labelSize } from '../../../src/view/schematic/label-size.ts';
import { labelsOf } from '../../../src/view/schematic/labels.ts';
import { layoutOf } from '../../../src/view/schematic/layout.ts';
import { measuresFor } from '../../../src/view/schematic/measures.ts';
import { shippedSetup } from '../../support/library.ts';
import { channels, vocabulary } from '../../view/frames.ts';
import { dairy, fireTube, hotWater } from '../../view/plants.ts';

const words = { message, reading: siReading, channels: indexChannels(channels), vocabulary };

describe('every place of a tool that is not a wire', () => {
  it.each([
    ['healthy-start', dairy],
    ['laundry-healthy-start', fireTube],
    ['school-healthy-start', hotWater],
  ] as const)('has an item of the drawing beside it: %s', (start, shape) => {
    const specs = labelsOf(shape, words, true);
    const m = measuresFor({ width: 1472, height: 668 });
    const layout = layoutOf(shape, m, (id) => labelSize(specs.get(id), m.fontPx, m.lineHeightPx));
    const drawn = new Set(layout.symbols.map(({ id }) => id));
    const missing = testPointsOf(shippedSetup(start).plant).flatMap(({ id, where }) =>
      'item' in where && !drawn.has(where.item) ? [`${id}: ${where.item}`] : [],
    );
    expect(missing).toEqual([]);
  });
});
