import { PROOF_WORDS } from '../../engine/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { lowerFirst, stepWords } from '../plain-words.ts';
import { listWords } from './statement-words.ts';

/** As the engine notes it, or as the page has it from its worker. */
export type StartEvent =
  | { readonly t: number; readonly type: 'step'; readonly step: string }
  | { readonly t: number; readonly type: 'proved' | 'lost'; readonly what: string }
  | { readonly t: number; readonly type: 'lockout'; readonly cause: string; readonly step: string }
  | { readonly t: number; readonly type: 'reset'; readonly count: number }
  | { readonly t: number; readonly type: 'command' | 'action' | 'fault' | 'end' };

/** One line to be: a step, with what was told to the controller in it. */
interface Line {
  readonly t: number;
  readonly head: string;
  readonly notes: Note[];
}
interface Note {
  readonly t: number;
  readonly what: string;
}

const CALL = PROOF_WORDS.callForHeat;
/** What follows by itself from where air and fuel are driven to; only in these steps does it tell anything. */
const TELLS_IN: Readonly<Record<string, ReadonlySet<string>>> = {
  [PROOF_WORDS.airChangesCounted]: new Set(['purge']),
  [PROOF_WORDS.damperAtPurge]: new Set(['drive to purge', 'purge']),
  [PROOF_WORDS.fanAtPurgeSpeed]: new Set(['drive to purge', 'purge']),
};
const LIT_OFF_FROM: ReadonlySet<string> = new Set([
  'drive to light-off',
  'spark check',
  'pilot trial',
  'pilot proving',
  'main trial',
  'main proving',
]);
const AT_LIGHT_OFF: ReadonlySet<string> = new Set([
  PROOF_WORDS.damperAtLightOff,
  PROOF_WORDS.fanAtLightOffSpeed,
  PROOF_WORDS.fuelValveAtLightOff,
]);
/** All fuel is off then; what else falls away with it says nothing. */
const TELLS_AFTER_LOCKOUT: ReadonlySet<string> = new Set([
  PROOF_WORDS.flame,
  PROOF_WORDS.upstreamValveClosed,
  PROOF_WORDS.downstreamValveClosed,
]);
/** Moves with every opening of the main valves; it is watched while they are proved. */
const OF_VALVE_PROVING: ReadonlySet<string> = new Set([
  PROOF_WORDS.interspaceEmpty,
  PROOF_WORDS.interspaceFull,
]);
const SERVICE = 'modulation';
const LOCKOUT = 'lockout';
/** More than this at one instant is one thing that happened to the lot of them. */
const MOST_AT_ONCE = 4;

/**
 * A start as lines of time and event, for paper and for those who do not see the chart. Times count
 * from the call for heat; what was before it, and faults, are left out.
 *
 * @param events of a run, in order of time
 * @param untilS where the record ends, s of the run; said where the start had not come to an end by then
 */
export function startWords(events: readonly StartEvent[], untilS?: number): readonly string[] {
  const zeroS = calledS(events);
  const lines: Line[] = [];
  let step = '';
  for (const event of events) {
    if (event.t < zeroS || event.t > (untilS ?? event.t)) continue;
    const isCall = event.type === 'proved' && event.what === CALL;
    if (event.type === 'step') step = event.step;
    const head = isCall ? say('quiz.start.called') : headOf(event);
    if (head !== null) lines.push({ t: event.t, head, notes: [] });
    else if (event.type === 'proved' || event.type === 'lost') {
      if (tells(event.what, step)) lines.at(-1)?.notes.push(noteOf(event));
    }
  }
  if (untilS !== undefined && step !== SERVICE && step !== LOCKOUT && step !== '') {
    const head = say('quiz.start.ends', { step: stepWords(step) });
    lines.push({ t: untilS, head, notes: [] });
  }
  return lines.map((line) => lineWords(line, zeroS));
}

function calledS(events: readonly StartEvent[]): number {
  const called = events.find((event) => event.type === 'proved' && event.what === CALL);
  return called?.t ?? events[0]?.t ?? 0;
}

/** What begins a line of its own; null for what is noted in the line before. */
function headOf(event: StartEvent): string | null {
  switch (event.type) {
    case 'step':
      if (event.step === LOCKOUT) return null;
      return event.step === SERVICE ? say('quiz.start.service') : stepWords(event.step);
    case 'lockout':
      return say('quiz.start.lockout', {
        step: stepWords(event.step),
        cause: lowerFirst(sayWord('cause', event.cause)),
      });
    case 'reset':
      return say('quiz.start.reset');
    default:
      return null;
  }
}

function tells(what: string, step: string): boolean {
  if (what === CALL) return true;
  if (step === LOCKOUT) return TELLS_AFTER_LOCKOUT.has(what);
  if (AT_LIGHT_OFF.has(what)) return LIT_OFF_FROM.has(step);
  if (OF_VALVE_PROVING.has(what)) return step.startsWith('valve proving');
  return TELLS_IN[what]?.has(step) ?? true;
}

function noteOf({ t, type, what }: Extract<StartEvent, { what: string }>): Note {
  const input = Object.entries(PROOF_WORDS).find(([, each]) => each === what)?.[0];
  return { t, what: sayWord('input', input ?? what, type === 'proved' ? '' : '.not') };
}

function lineWords({ t, head, notes }: Line, zeroS: number): string {
  const time = clock(t - zeroS);
  if (notes.length === 0) return say('quiz.start.line', { time, what: head });
  const said = notes.flatMap((note, place) => {
    const together = notes.filter((one) => one.t === note.t);
    const at = clock(note.t - zeroS);
    if (together.length <= MOST_AT_ONCE)
      return [say('quiz.start.note', { what: note.what, time: at })];
    const isFirst = notes[place - 1]?.t !== note.t;
    return isFirst ? [say('quiz.start.many', { count: together.length, time: at })] : [];
  });
  return say('quiz.start.line-with', { time, what: head, notes: listWords(said) });
}

/** '1:07', whole seconds. */
function clock(tS: number): string {
  const seconds = Math.floor(tS + 1e-6);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
