import { readAt } from '../channels.ts';
import { bitOf, isSet, terminalOf } from '../vocabulary.ts';
import { type Proof, valveLook, valveWord } from './valve-view.ts';
import type { Words } from './words.ts';

/** `wrong` is the only tone with a saturated colour. */
export type Tone = 'name' | 'value' | 'good' | 'wrong';

export interface LineText {
  readonly text: string;
  readonly tone: Tone;
  /** A drawn tick after the text: proved. */
  readonly tick: boolean;
}

export interface LabelLine {
  /** Says the same in every frame. */
  readonly fixed?: true;
  read(frame: Float64Array): readonly LineText[];
  /** The widest things it may come to say; room is kept for them. */
  readonly widest: readonly (readonly LineText[])[];
}

const plain = (text: string, tone: Tone, tick = false): LineText => ({ text, tone, tick });

export function nameLine(name: string): LabelLine {
  const runs = [plain(name, 'name')];
  return { fixed: true, read: () => runs, widest: [runs] };
}

/** A name and its reading on one line, or the reading alone. */
export function readingLine(
  words: Words,
  channel: string,
  extremes: readonly number[],
  name?: string,
): LabelLine {
  const place = words.channels.indexOf(channel);
  const unit = words.channels.unitOf(channel);
  const head = name === undefined ? [] : [plain(`${name} `, 'name')];
  const say = (value: number): LineText[] => [
    ...head,
    plain(words.reading(value, unit, channel), 'value'),
  ];
  return {
    read: (frame) => say(readAt(frame, place, Number.NaN)),
    widest: extremes.map(say),
  };
}

/** A reading with a tick while the machine's input says that it is proved. */
export function provedReadingLine(
  words: Words,
  channel: string,
  extremes: readonly number[],
  input: string,
  name: string,
): LabelLine {
  const place = words.channels.indexOf(channel);
  const unit = words.channels.unitOf(channel);
  const inputs = words.channels.indexOf('logic.inputs');
  const bit = bitOf(words.vocabulary.inputs, input);
  const head = plain(`${name} `, 'name');
  const say = (value: number, proved: boolean): LineText[] => [
    head,
    plain(words.reading(value, unit, channel), 'value', proved),
  ];
  return {
    read: (frame) => say(readAt(frame, place, Number.NaN), isSet(readAt(frame, inputs), bit)),
    widest: extremes.map((value) => say(value, true)),
  };
}

/** A position, and after it where it was told to be while that differs. */
export function positionLine(words: Words, feedback: string, target: string): LabelLine {
  const is = words.channels.indexOf(feedback);
  const asked = words.channels.indexOf(target);
  const unit = words.channels.unitOf(feedback);
  const say = (at: number, to: number): LineText[] => {
    const text = words.reading(at, unit, feedback);
    if (!differs(at, to)) return [plain(text, 'value')];
    return [
      plain(
        words.message('view.position', { at: text, to: words.reading(to, unit, target) }),
        'value',
      ),
    ];
  };
  return {
    read: (frame) => say(readAt(frame, is, Number.NaN), readAt(frame, asked, Number.NaN)),
    widest: [say(88.8, 60.6)],
  };
}

/** Where a position was told to be, while that differs; a line of its own for a narrow place. */
export function askedLine(words: Words, feedback: string, target: string): LabelLine {
  const is = words.channels.indexOf(feedback);
  const asked = words.channels.indexOf(target);
  const unit = words.channels.unitOf(feedback);
  const say = (to: number): LineText[] => [
    plain(words.message('view.asked', { to: words.reading(to, unit, target) }), 'value'),
  ];
  return {
    read: (frame) => {
      const to = readAt(frame, asked, Number.NaN);
      return differs(readAt(frame, is, Number.NaN), to) ? say(to) : [];
    },
    widest: [say(88.8)],
  };
}

function differs(at: number, to: number): boolean {
  return Math.abs(to - at) > ARRIVED_DEG;
}
const ARRIVED_DEG = 0.5;

export function valveLine(words: Words, edgeId: string, hasProof: boolean): LabelLine {
  const opening = words.channels.indexOf(`gas.${edgeId}.opening`);
  const inputs = words.channels.indexOf('logic.inputs');
  const bit = hasProof ? bitOf(words.vocabulary.inputs, `${terminalOf(edgeId)}Closed`) : 0;
  const say = (share: number, proof: Proof): LineText[] => {
    const { state } = valveLook(share);
    const code = valveWord(state, proof);
    const wrong = state === 'shut' && proof === 'not proved';
    const tick = state === 'shut' && proof === 'proved';
    return [plain(words.message(code), wrong ? 'wrong' : 'value', tick)];
  };
  const proofIn = (frame: Float64Array): Proof =>
    bit === 0 ? 'no proof' : isSet(readAt(frame, inputs), bit) ? 'proved' : 'not proved';
  return {
    read: (frame) => say(readAt(frame, opening), proofIn(frame)),
    widest: [
      say(0, 'proved'),
      say(0.5, 'proved'),
      say(1, 'proved'),
      ...(bit === 0 ? [] : [say(0, 'not proved')]),
    ],
  };
}

/** A proof of the machine's inputs, in words. */
export function proofLine(words: Words, input: string, made: string, open: string): LabelLine {
  const inputs = words.channels.indexOf('logic.inputs');
  const bit = bitOf(words.vocabulary.inputs, input);
  const yes = [plain(words.message(made), 'good', true)];
  const no = [plain(words.message(open), 'value')];
  return { read: (frame) => (isSet(readAt(frame, inputs), bit) ? yes : no), widest: [yes, no] };
}

/** A name with one of two words, by what a frame says. */
export function eitherLine(
  words: Words,
  isSo: (frame: Float64Array) => boolean,
  codes: readonly [yes: string, no: string],
  name: string,
): LabelLine {
  const head = plain(`${name} `, 'name');
  const [yes, no] = codes.map((code) => [head, plain(words.message(code), 'value')]);
  return { read: (frame) => (isSo(frame) ? yes : no), widest: [yes, no] };
}

/** On or off by whether a quantity is there. */
export function presenceLine(
  words: Words,
  channel: string,
  threshold: number,
  name: string,
): LabelLine {
  const place = words.channels.indexOf(channel);
  const isThere = (frame: Float64Array): boolean => readAt(frame, place) > threshold;
  return eitherLine(words, isThere, ['view.on', 'view.off'], name);
}

/** A share of the lower flammability limit; above the limit the words are in the wrong colour. */
export function combustibleLine(words: Words, channel: string): LabelLine {
  const place = words.channels.indexOf(channel);
  const say = (share: number): LineText[] => [
    plain(
      words.message('view.unburnt-gas', { percent: (share * 100).toFixed(share < 0.1 ? 1 : 0) }),
      share >= 1 ? 'wrong' : 'value',
    ),
  ];
  return { read: (frame) => say(readAt(frame, place)), widest: [say(8.88)] };
}

/** A count, while there is one. */
export function countLine(words: Words, channel: string, code: string): LabelLine {
  const place = words.channels.indexOf(channel);
  const say = (value: number): LineText[] => [
    plain(words.message(code, { count: value.toFixed(1) }), 'value'),
  ];
  return {
    read: (frame) => {
      const count = readAt(frame, place);
      return count > 0 ? say(count) : [];
    },
    widest: [say(88.8)],
  };
}
