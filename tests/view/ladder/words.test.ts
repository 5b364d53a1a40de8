import { describe, expect, it } from 'vitest';
import { message } from '../../../src/i18n/index.ts';
import { indexChannels } from '../../../src/view/channels.ts';
import { createLiveBits } from '../../../src/view/ladder/live-bits.ts';
import { elementName, NAMED_PARTS } from '../../../src/view/ladder/names.ts';
import { createRungWords, newInStep, rungsOfStep } from '../../../src/view/ladder/rung-words.ts';
import {
  boundedZoom,
  CLOSEST,
  FURTHEST,
  scrollFor,
} from '../../../src/view/ladder/scroll-control.ts';
import { signalWires } from '../../../src/view/ladder/signal-wires.ts';
import { BITS_A_WORD } from '../../../src/view/packed-bits.ts';
import { wiring } from './wiring.ts';

const channels = ['wiring.live.0', 'wiring.made.0', 'wiring.made.1'].map((id) => ({
  id,
  unit: '1',
}));
const NO_STEP = { commands: [], inputs: [] };

function frameOf(live: readonly string[], made: readonly string[]): Float64Array {
  const frame = new Float64Array(channels.length);
  for (const wire of live) frame[0] += 2 ** wiring.wires.indexOf(wire);
  for (const name of made) {
    const place = wiring.elements.findIndex((element) => element.name === name);
    frame[1 + Math.floor(place / BITS_A_WORD)] += 2 ** (place % BITS_A_WORD);
  }
  return frame;
}

describe('bits packed over several words', () => {
  it('are read across the border of a word and say when one of them changed', () => {
    const bits = createLiveBits('wiring.made', 40, indexChannels(channels));
    const frame = Float64Array.of(0, 2 ** 29, 1);
    expect(bits.take(frame)).toBe(true);
    expect([28, 29, 30, 31].map((place) => bits.isSet(place))).toEqual([false, true, true, false]);
    expect(bits.take(Float64Array.of(99, 2 ** 29, 1))).toBe(false);
    expect(bits.take(Float64Array.of(99, 2 ** 29, 0))).toBe(true);
  });

  it('of a run that does not record them are all unset', () => {
    const bits = createLiveBits('wiring.made', 40, indexChannels([]));
    bits.take(Float64Array.of(1, 2, 3));
    expect([0, 39, -1].some((place) => bits.isSet(place))).toBe(false);
  });
});

describe('the names of elements', () => {
  it.each([
    ['fan-relay.coil', 'fan relay'],
    ['in.waterAboveFirst', message('view.ladder.part.in', { device: 'water above first' })],
    ['ai.flame-sensor', message('view.ladder.part.ai', { device: 'flame sensor' })],
    ['emergency-stop', 'emergency stop'],
  ])('%s is in words', (name, words) => {
    expect(elementName({ name }, message)).toBe(words);
  });

  it('have words for every part', () => {
    for (const part of NAMED_PARTS) {
      expect(message(`view.ladder.part.${part}`, { device: 'fan' })).toContain('fan');
    }
  });
});

describe('the ladder in words', () => {
  const say = createRungWords(wiring, channels, message);

  it('says of every rung which wires are live and how each element stands', () => {
    const rungs = say(frameOf(['L', 'L0'], ['isolator']), NO_STEP);
    expect(rungs).toHaveLength(wiring.rungs.length);
    expect(rungs[0].text).toBe(
      'wire L live, isolator closed, wire L0 live, control fuse blown, wire L1',
    );
  });

  it('as on paper says names only, whatever the plant does', () => {
    const onPaper = createRungWords(wiring, channels, message, false);
    const before = onPaper(frameOf([], []), NO_STEP).map(({ text }) => text);
    expect(before[0]).toBe('wire L, isolator, wire L0, control fuse, wire L1');
    const after = onPaper(frameOf(['L', 'L0'], ['isolator']), NO_STEP).map(({ text }) => text);
    expect(after).toEqual(before);
  });

  it('says the past state of a moment looked back to', () => {
    const before = say(frameOf([], []), NO_STEP)[11].text;
    const after = say(frameOf(['L1', '30'], ['out.fan', 'fan-relay.coil']), NO_STEP)[11].text;
    expect(after).toContain('fan relay energised');
    expect(say(frameOf([], []), NO_STEP)[11].text).toBe(before);
  });

  it('calls a wire of a loop, a track or the flame signal neither live nor dead', () => {
    expect([...signalWires(wiring)].sort()).toEqual(['71', '81', '82', '90']);
    const [loop] = say(frameOf(['P24', '71'], ['vessel.loop']), NO_STEP).slice(15);
    expect(loop.text).toContain('wire P24 live, ');
    expect(loop.text).toContain('signal wire 71');
  });

  it('is not put together again while nothing changed', () => {
    const frame = frameOf(['L'], []);
    expect(say(frame, NO_STEP)).toBe(say(frame, NO_STEP));
  });
});

describe('the rungs of a step', () => {
  it('are those of its outputs with what their relays feed, and those of its inputs', () => {
    const rungs = rungsOfStep(wiring, { commands: ['pilotValve'], inputs: ['callForHeat'] });
    expect([...rungs].map((rung) => wiring.rungs[rung].join(' ')).sort()).toEqual([
      '50 pilot-valve-relay.contact 41 pilot-valve N',
      'L1 first-low-water 21 second-low-water 22 high-limit 23 low-gas 24 high-gas 25 operating-control 26 time-clock 27 in.callForHeat N',
      'L1 out.pilotValve 32 pilot-valve-relay.coil N',
    ]);
  });
});

describe('what is new in a step', () => {
  it('is what the step before neither drove nor waited for', () => {
    const before = { commands: ['safetyRelay', 'fan'], inputs: ['airProved'] };
    const step = { commands: ['safetyRelay', 'fan', 'spark'], inputs: ['airProved', 'flame'] };
    expect(newInStep(step, before)).toEqual({ commands: ['spark'], inputs: ['flame'] });
  });
});

describe('moving about the ladder', () => {
  it('does not scroll to what is seen already', () => {
    expect(scrollFor(120, 200, { top: 100, height: 300 })).toBe(100);
  });

  it('shows the top of a stretch that is longer than the view', () => {
    expect(scrollFor(500, 2000, { top: 0, height: 300 })).toBe(488);
  });

  it('scrolls no further than it must', () => {
    expect(scrollFor(500, 600, { top: 0, height: 300 })).toBe(312);
    expect(scrollFor(40, 90, { top: 200, height: 300 })).toBe(28);
  });

  it('zooms within its bounds', () => {
    expect(boundedZoom(1, 100)).toBe(CLOSEST);
    expect(boundedZoom(1, 0.01)).toBe(FURTHEST);
  });
});
