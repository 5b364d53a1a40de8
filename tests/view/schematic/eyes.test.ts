import { describe, expect, it } from 'vitest';
import { LOOK_WHATS } from '../../../src/engine/index.ts';
import { message } from '../../../src/i18n/index.ts';
import { indexChannels } from '../../../src/view/channels.ts';
import { siReading } from '../../../src/view/reading.ts';
import { eyesIndex, eyesLabels } from '../../../src/view/schematic/eyes.ts';
import { labelSize } from '../../../src/view/schematic/label-size.ts';
import { labelsOf } from '../../../src/view/schematic/labels.ts';
import { layoutOf } from '../../../src/view/schematic/layout.ts';
import { lookItem } from '../../../src/view/schematic/look-items.ts';
import { measuresFor } from '../../../src/view/schematic/measures.ts';
import { channels, frameWith, vocabulary } from '../frames.ts';
import { dairy, fireTube, hotWater } from '../plants.ts';

const PLANTS = [dairy, fireTube, hotWater];

function wordsFor(plant: typeof dairy) {
  const seen = eyesIndex(indexChannels(channels), plant);
  return { message, reading: siReading, channels: seen, vocabulary };
}

function eyesOf(plant: typeof dairy) {
  const words = wordsFor(plant);
  return eyesLabels(labelsOf(plant, words, false), plant, words);
}

function textOf(plant: typeof dairy, values: Parameters<typeof frameWith>[0]): string {
  const frame = frameWith(values);
  return [...eyesOf(plant).values()]
    .flatMap(({ lines }) => lines.flatMap((line) => line.read(frame).map(({ text }) => text)))
    .join('\n');
}

describe.each(PLANTS.map((plant) => [plant.id, plant] as const))('eyes at %s', (_id, plant) => {
  it('read the same from the drawing whatever flows, burns or is commanded inside', () => {
    const busy = {
      'gas.regulated.pressure': 2345,
      'gas.upstream-valve.opening': 1,
      'gas.fuel-valve.flow': 0.1,
      'air.windbox.pressure': 987,
      'damper.feedback': 61,
      'damper.blade': 12,
      'furnace.air-changes': 3,
      'flue.temperature': 480,
      'spark.power': 80,
      'main.intensity': 0.9,
      'flame.signal': 7.7,
      'fan.frequency': 43,
      'fan.current': 9,
      'logic.inputs': 255,
      'logic.commands': 255,
    };
    expect(textOf(plant, busy)).toBe(textOf(plant, {}));
    const seen = eyesIndex(indexChannels(channels), plant);
    for (const id of Object.keys(busy)) expect(seen.indexOf(id), id).toBe(-1);
  });

  it('read the dials and see how the cock stands', () => {
    const dial = plant.vesselKind === 'hot water' ? 'vessel.temperature' : 'vessel.pressure';
    expect(textOf(plant, { [dial]: 345678 })).not.toBe(textOf(plant, {}));
    expect(textOf(plant, { 'gas.cock.opening': 1 })).not.toBe(textOf(plant, {}));
  });

  it('find a name at every thing but the test points', () => {
    for (const [id, { lines }] of eyesOf(plant)) {
      expect(lines.length, id).toBeGreaterThanOrEqual(id.startsWith('test-point:') ? 0 : 1);
    }
  });

  it('are led to an item that the drawing has, for every place that is not on the panel', () => {
    const specs = eyesOf(plant);
    const m = measuresFor({ width: 982, height: 620 });
    const layout = layoutOf(plant, m, (id) => labelSize(specs.get(id), m.fontPx, m.lineHeightPx));
    const drawn = new Set(layout.symbols.map(({ id }) => id));
    const steam = plant.vesselKind !== 'hot water';
    const elsewhere = new Set<string>([
      'panel switches',
      'time clock',
      'fuses',
      'control relays',
      'terminal strip',
      ...(steam ? [] : ['gauge glass']),
      ...(drawn.has('vent-valve') ? [] : ['vent valve indicator']),
    ]);
    const lost = LOOK_WHATS.filter(
      (what) => !elsewhere.has(what) && !drawn.has(lookItem(what, plant)),
    );
    // A plant without a drive of its own speed has no display.
    expect(lost.filter((what) => what !== 'drive display' || drawn.has('drive'))).toEqual([]);
  });
});
