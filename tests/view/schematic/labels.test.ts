import { describe, expect, it } from 'vitest';
import { message } from '../../../src/i18n/index.ts';
import { indexChannels } from '../../../src/view/channels.ts';
import { siReading } from '../../../src/view/reading.ts';
import type { LineText } from '../../../src/view/schematic/label-lines.ts';
import { lineWidth } from '../../../src/view/schematic/label-size.ts';
import { labelsOf } from '../../../src/view/schematic/labels.ts';
import { channels, frameWith, vocabulary, wordOf } from '../frames.ts';
import { dairy, fireTube } from '../plants.ts';

const words = { message, reading: siReading, channels: indexChannels(channels), vocabulary };
const specs = labelsOf(dairy, words, true);

function lineOf(id: string, line: number, frame: Float64Array): readonly LineText[] {
  const spec = specs.get(id);
  if (spec === undefined) throw new Error(`no label ${id}`);
  return spec.lines[line].read(frame);
}

describe('the words of the drawing', () => {
  it('a valve that is shut without its proof is said to be so, in the wrong tone', () => {
    const unproved = frameWith({ 'gas.upstream-valve.opening': 0 });
    expect(lineOf('upstream-valve', 1, unproved)).toEqual([
      { text: message('view.valve.not-proved'), tone: 'wrong', tick: false },
    ]);
  });

  it('a proved valve is shut with a tick', () => {
    const inputs = wordOf(vocabulary.inputs, 'upstreamValveClosed');
    expect(lineOf('upstream-valve', 1, frameWith({ 'logic.inputs': inputs }))).toEqual([
      { text: message('view.valve.shut'), tone: 'value', tick: true },
    ]);
  });

  it('a valve without proof of closure is only shut', () => {
    const line = labelsOf(fireTube, words, false).get('upstream-valve')?.lines[1];
    expect(line?.read(frameWith({}))).toEqual([
      { text: message('view.valve.shut'), tone: 'value', tick: false },
    ]);
  });

  it('a position says where it was told to be only until it is there', () => {
    const moving = frameWith({ 'damper.feedback': 40, 'damper.target': 90 });
    const there = frameWith({ 'damper.feedback': 89.8, 'damper.target': 90 });
    expect(lineOf('damper', 1, moving)[0].text).toContain('90.0°');
    expect(lineOf('damper', 1, there)[0].text).toBe('89.8°');
  });

  it('unburnt gas at its lower limit is in the wrong tone, below it is not', () => {
    const at = (share: number) =>
      lineOf('teaching', 1, frameWith({ 'furnace.combustible': share }));
    expect(at(1)[0].tone).toBe('wrong');
    expect(at(0.5)[0].tone).toBe('value');
  });

  it('what only the simulator knows is said in the teaching overlay alone', () => {
    expect(labelsOf(dairy, words, false).has('teaching')).toBe(false);
  });

  it('a reading the run does not have is a dash', () => {
    const bare = {
      ...words,
      channels: indexChannels(channels.filter(({ id }) => id !== 'fan.speed')),
    };
    const line = labelsOf(dairy, bare, false).get('fan')?.lines[0];
    expect(line?.read(frameWith({})).at(-1)?.text).toBe('–');
  });

  it('room is kept for whatever a valve, a proof or a reading of the plant may come to say', () => {
    const extremes = [
      frameWith({ 'flue.temperature': 293 }),
      frameWith({
        'flue.temperature': 640,
        'gas.inlet.pressure': 19999,
        'gas.interspace.pressure': -1234,
        'gas.upstream-valve.opening': 0.5,
        'damper.feedback': 79.9,
        'damper.target': 89.9,
        'fan.speed': 1799,
        'fan.frequency': 59.9,
        'flame.signal': 19.9,
        'vessel.pressure': 1.19e6,
        'vessel.level': -0.199,
        'logic.inputs': wordOf(vocabulary.inputs, ...vocabulary.inputs),
      }),
    ];
    for (const spec of specs.values()) {
      for (const line of spec.lines) {
        const room = Math.max(...line.widest.map((runs) => lineWidth(runs, 16)));
        for (const frame of extremes) {
          expect([spec.id, lineWidth(line.read(frame), 16) <= room + 0.01]).toEqual([
            spec.id,
            true,
          ]);
        }
      }
    }
  });
});
