import { lookWords, type TestPoint } from '../bench/index.ts';
import type { ChannelInfo, LookWhat } from '../engine/index.ts';
import { isMessage, say, sayMessage, sayWord, slugOf } from '../i18n/index.ts';
import type { QuantityKind, UnitSystem } from '../quantity/index.ts';
import { channelName } from './channel-name.ts';
import { deviceName, idWords, lowerFirst, partsOf, stepWords, terminalOf } from './plain-words.ts';
import { quantityText, readingText } from './quantity-text.ts';

/** What a plant calls its places, terminals and channels. */
export interface Names {
  readonly testPoints: readonly TestPoint[];
  readonly inputs: readonly string[];
  readonly channels: readonly Pick<ChannelInfo, 'id' | 'kind'>[];
}

/** One thing that a check says, or would say: the bin, and the number or word where it was read. */
export interface Answer {
  readonly check: string;
  readonly aspect: string;
  readonly word: string;
  readonly value?: number | string;
  readonly moment?: string;
}

/** What can be read of the air side and the flue is small, and written with one digit more. */
const AIR_PLACES: ReadonlySet<string> = new Set(['windbox', 'furnace', 'flue']);
const LINE_KINDS: Readonly<Record<string, QuantityKind>> = {
  oxygen: 'gas share',
  'carbon-monoxide': 'trace gas',
  temperature: 'temperature',
};
const TOOL_KINDS: Readonly<Record<string, QuantityKind>> = {
  'flame-signal meter': 'flame current',
  strobe: 'shaft speed',
  multimeter: 'current',
  thermometer: 'temperature',
};
/** Looks that take in several things of a kind, each by its id: something or nothing. */
const BY_ID: ReadonlySet<string> = new Set(['fuses', 'limit buttons', 'control relays']);
/** Moments that every plant comes to. */
const OF_NO_STEP: ReadonlySet<string> = new Set(['at rest', 'standing', 'isolated']);

/** What a check says, without saying which: "low, 12.3 mbar". */
export function answerWords(names: Names, answer: Answer, units: UnitSystem = 'SI'): string {
  const { check, aspect, word } = answer;
  const { what } = partsOf(check);
  if (word === 'not reached') return missingWords(answer);
  switch (what) {
    case 'look':
      return lookAnswer(answer);
    case 'listen':
      return say('told.heard', { what: aspect, loud: sayWord('told.loud', word) });
    case 'smell':
      return sayWord('job.look.smell', word);
    case 'leak spray':
      return word === '' ? say('told.spray.nothing') : sayWord('bench.note', word);
    case 'history':
      return aspect === 'cause'
        ? sayWord('cause', word)
        : say('told.in-step', { step: stepWords(word) });
    case 'watch one start':
      return panelAnswer(names, answer, units);
    case 'commissioning sheet':
      return say('told.of', { aspect, said: amountWords(word) });
    case 'flue-gas analyser':
      return say('told.of', {
        aspect:
          aspect === 'temperature' ? say('told.line.temperature') : sayWord('bench.line', aspect),
        said: withValue(answer, LINE_KINDS[aspect] ?? null, units),
      });
    case 'volts':
      return volts(answer);
    case 'continuity':
      return sayWord('told.way', word);
    default:
      return withValue(answer, kindOf(check), units);
  }
}

function panelAnswer(names: Names, answer: Answer, units: UnitSystem): string {
  const { aspect, word, value } = answer;
  const input = /^input (\d+)$/.exec(aspect)?.[1];
  if (input !== undefined) {
    const suffix = word === 'made' ? '' : '.not';
    return sayWord('input', names.inputs[Number(input)] ?? aspect, suffix);
  }
  if (aspect === 'ends in') {
    return say('told.ends-in', { step: stepWords(word) });
  }
  if (aspect === 'duration') {
    const said = word === 'dead' ? say('told.word.no-time') : withValue(answer, 'time', units);
    return say('told.of', { aspect: say('told.duration'), said });
  }
  const kind = names.channels.find(({ id }) => id === aspect)?.kind ?? null;
  const said = binWords(word);
  return say('told.of', {
    aspect: lowerFirst(channelName(aspect)),
    said:
      typeof value === 'number' && kind !== null
        ? say('told.with-value', { said, value: readingText(value, kind, units, aspect) })
        : said,
  });
}

function lookAnswer({ check, aspect, word, value }: Answer): string {
  const { place } = partsOf(check);
  const what = place as LookWhat;
  if (aspect === 'words') {
    const codes = word.split('+').filter((code) => code !== '');
    return codes.length === 0 ? say('job.look.nothing') : codes.map(codeWords).join(' ');
  }
  if (BY_ID.has(place)) {
    const code = `told.${slugOf(place)}.${word}` as 'told.fuses.yes';
    return say(code, { what: idWords(aspect) });
  }
  if (place === 'terminal strip') return stripWords(aspect, word);
  const named = `told.aspect.${aspect}`;
  const said = amountWords(word);
  const seen =
    typeof value === 'number'
      ? lookWords({ what, words: [], values: { [aspect]: value }, needsOpening: false })
      : [];
  return say('told.of', {
    aspect: isMessage(named) ? say(named) : idWords(aspect),
    said:
      seen[0] === undefined
        ? said
        : say('told.with-value', {
            said,
            value: lowerFirst(sayMessage(seen[0]).replace(/\.$/, '')),
          }),
  });
}

function stripWords(aspect: string, word: string): string {
  const [from = '', to] = aspect.split('+');
  if (to !== undefined) return say(word === 'yes' ? 'told.jumper' : 'told.no-jumper', { from, to });
  const { device, end } = terminalOf(aspect);
  return say(word === 'yes' ? 'told.wire-out' : 'told.wire-in', {
    device: deviceName(device),
    end,
  });
}

/** Nothing was read; why depends on what was to be read and when. */
function missingWords({ check, aspect, moment = '' }: Answer): string {
  const { what, place } = partsOf(check);
  if (what === 'history') return say('told.word.no-lockout');
  if (what === 'look' && place === 'terminal strip') return stripWords(aspect, 'no');
  return say(OF_NO_STEP.has(moment) ? 'told.word.not-there' : 'told.word.not-reached');
}

function kindOf(check: string): QuantityKind | null {
  const { what, place } = partsOf(check);
  if (what === 'manometer') return AIR_PLACES.has(place) ? 'air pressure' : 'gas pressure';
  return TOOL_KINDS[what] ?? null;
}

function withValue(answer: Answer, kind: QuantityKind | null, units: UnitSystem): string {
  const { aspect, word, value } = answer;
  const said = aspect === 'steady' && word === 'in band' ? say('told.word.steady') : binWords(word);
  if (typeof value !== 'number' || kind === null || !Number.isFinite(value)) return said;
  return say('told.with-value', { said, value: quantityText(value, kind, units) });
}

function volts({ aspect, word, value }: Answer): string {
  const said = voltsWord(aspect, word);
  return typeof value === 'number'
    ? say('told.with-value', { said, value: say('told.volts', { volts: value.toFixed(1) }) })
    : said;
}

function voltsWord(aspect: string, word: string): string {
  if (aspect === 'live') return sayWord('told.live', word);
  return word === 'dead' ? say('told.word.no-volts') : binWords(word);
}

/** Of a setting or a place, where nothing is a place too. */
function amountWords(word: string): string {
  return word === 'dead' ? say('told.word.nought') : binWords(word);
}

function binWords(word: string): string {
  return sayWord('told.word', word);
}

function codeWords(code: string): string {
  return isMessage(code) ? say(code) : code;
}
