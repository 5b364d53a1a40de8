/**
 * What happens next on all plants that look the same where a record ends. The atlas has what every step
 * ends with, not what stands in the middle of one, so that plants are started again and counted: those
 * with the same fault within its range and their tolerances, and particles of the atlas with any other
 * cause whose panel reads alike, by their share of the belief after the steps that are over.
 */
import { INPUT_BITS, INPUTS } from '../../../../machines/burner/index.ts';
import {
  AT_REST,
  type Atlas,
  afterSeeing,
  durationReading,
  keyPlacesOf,
  observationsOf,
  panelReadings,
  priorBelief,
  type Reading,
  sharesOf,
  WATCH_A_START,
} from '../../../diagnosis/index.ts';
import type { FaultOnset } from '../../../engine/index.ts';
import { createRandom, nextUniform } from '../../../numeric/index.ts';
import { quizTablesOf } from '../../evidence/quiz-tables.ts';
import type { ItemRun } from '../../item/item.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { pickTolerances } from '../../item/other-plant.ts';
import { setupOfRun } from '../../item/setup-of-run.ts';
import { type Cut, watchedInputs } from './cut.ts';
import { anotherSeverity } from './pick-run.ts';
import {
  isSameOutcome,
  type Outcome,
  type PassedStep,
  recordStart,
  type StartRecord,
  type TakenStart,
} from './start-record.ts';

export interface AlikeStart {
  readonly outcome: Outcome | null;
  /** Of the belief. */
  readonly weight: number;
  /** It has the fault of the item. */
  readonly own: boolean;
}

/** Own plants at first, all plants that must look the same in the end, and what is tried for them. */
const OWN_AT_FIRST = 8;
export const LEAST_ALIKE = 20;
const MOST_OWN = 40;
const MOST_OTHERS = 16;
const MOST_OF_A_CAUSE = 2;
/** A number on its way looks the same within this share of what is left of its way. */
const LOOKS_SAME = 0.35;
const CALL_S = 60;
const START: FaultOnset = { kind: 'start' };
const MOST_KEPT = 240;

/** @returns fewer than `LEAST_ALIKE` where no more look the same; own ones that differ end the search */
export function alikeStarts(
  plant: QuizPlant,
  run: ItemRun,
  taken: TakenStart,
  cut: Cut,
  channels: readonly string[],
): readonly AlikeStart[] {
  const { atlas } = plant;
  const onset = run.faults[0]?.onset ?? START;
  // What comes later has left no trace in the steps before.
  const shares =
    onset.kind === 'start' ? sharesAtCut(plant, taken, cut) : sharesOf(priorBelief(atlas));
  const { spans } = quizTablesOf(plant);
  const fault = run.faults[0]?.fault ?? null;
  const cause = atlas.causes.findIndex((one) => one.fault === fault);
  const found: AlikeStart[] = [];
  let tried = 0;
  const ofOwn = sum(shares, spans[cause] as number, spans[cause + 1] as number);
  const look = (record: StartRecord) => outcomeIfAlike(plant, taken.record, record, cut);
  const own = (place: number) => {
    tried += 1;
    const outcome = look(recordOwn(plant, run, place, channels, cut));
    return outcome === undefined ? [] : [{ outcome, weight: ofOwn, own: true }];
  };
  for (let place = 0; place < OWN_AT_FIRST; place++) {
    found.push(...own(place));
    if (found.some(({ outcome }) => !isRight(outcome, cut))) return found;
  }
  if (found.length === 0) return found;
  for (const p of likely(plant, shares, cut, taken.record, cause)) {
    const other = look(recordParticle(plant, p, onset, channels));
    if (other !== undefined) {
      found.push({ outcome: other, weight: shares[p] as number, own: false });
    }
  }
  for (let place = OWN_AT_FIRST; place < MOST_OWN && found.length < LEAST_ALIKE; place++) {
    found.push(...own(place));
  }
  // The plants that were tried share what their cause has.
  return found.map((one) => (one.own ? { ...one, weight: one.weight / tried } : one));
}

function isRight(outcome: Outcome | null, { right }: Cut): boolean {
  return outcome !== null && isSameOutcome(outcome, right);
}

/** Undefined: it does not look the same; null: nothing happens any more. */
function outcomeIfAlike(
  { sound }: QuizPlant,
  record: StartRecord,
  other: StartRecord,
  { passed, before, frame, sinceS, phase, heading }: Cut,
): Outcome | null | undefined {
  const there = other.passed.filter(({ step }) => step === passed.step)[before];
  if (there === undefined) return undefined;
  const atS = there.fromS + sinceS;
  if (there.toS <= atS) return undefined;
  const k = Math.round(atS / other.frameS);
  const mask = watchedInputs(sound, phase).reduce((all, input) => all | INPUT_BITS[input], 0);
  const differs = ((other.words[k] as number) ^ (record.words[frame] as number)) & mask;
  if (differs !== 0) return undefined;
  const isNear = heading.every(({ value, reading: { channel, limit } }) => {
    const theirs = other.traces[channel]?.[k] ?? Number.NaN;
    return Math.abs(theirs - value) <= LOOKS_SAME * Math.abs(limit - value);
  });
  return isNear ? there.next : undefined;
}

/** Particles of other causes whose panel ends the step as here, or who take long over it. */
function likely(
  { atlas }: QuizPlant,
  shares: Float64Array,
  { passed, frame }: Cut,
  { words, frameS }: StartRecord,
  own: number,
): readonly number[] {
  const end = Math.min(words.length - 1, Math.ceil(passed.toS / frameS - 1e-6));
  const atCut = panelMatch(atlas, passed.step, words[frame] as number);
  const atEnd = panelMatch(atlas, passed.step, words[end] as number);
  const duration = atlas.keys.find(
    ({ check, moment, aspect }) =>
      check === WATCH_A_START && moment === passed.step && aspect === 'duration',
  );
  const isSlow = (p: number) => duration?.bins[duration.column[p] as number] === 'high';
  const counts = new Map<number, number>();
  return [...shares.keys()]
    .filter((p) => atlas.causeOf[p] !== own && (atCut(p) || atEnd(p) || isSlow(p)))
    .sort((a, b) => (shares[b] as number) - (shares[a] as number) || a - b)
    .filter((p) => {
      const cause = atlas.causeOf[p] as number;
      const count = counts.get(cause) ?? 0;
      counts.set(cause, count + 1);
      return count < MOST_OF_A_CAUSE;
    })
    .slice(0, MOST_OTHERS);
}

function panelMatch(atlas: Atlas, step: string, word: number): (p: number) => boolean {
  const keys = atlas.keys.flatMap(({ check, moment, aspect, bins, column }) => {
    const bit = /^input (\d+)$/.exec(aspect)?.[1];
    if (check !== WATCH_A_START || moment !== step || bit === undefined) return [];
    if (Number(bit) >= INPUTS.length) return [];
    const made = ((word >> Number(bit)) & 1) === 1 ? 'made' : 'open';
    return [{ column, bin: bins.indexOf(made) }];
  });
  return (p) => keys.every(({ column, bin }) => column[p] === bin);
}

/** Shares of the particles after what the panel showed at the end of every step that is over. */
function sharesAtCut(
  { atlas }: QuizPlant,
  { record, run }: TakenStart,
  { passed }: Cut,
): Float64Array {
  const places = keyPlacesOf(atlas);
  const seenAt = (moment: string, endS: number, more: readonly Reading[]) => {
    const k = Math.min(run.frameCount(), Math.max(1, Math.ceil(endS / record.frameS - 1e-6))) - 1;
    const readings = [...panelReadings(run.channels, run.frame(k)), ...more];
    return observationsOf(atlas, places, moment, readings);
  };
  const over = record.passed.slice(0, record.passed.indexOf(passed));
  const steps = new Set<string>();
  const seen = over.flatMap(({ step, fromS, toS }) => {
    if (toS <= CALL_S || steps.has(step)) return [];
    steps.add(step);
    return seenAt(step, toS, [durationReading(toS - Math.max(fromS, CALL_S))]);
  });
  const all = [...seenAt(AT_REST, CALL_S, []), ...seen];
  return sharesOf(afterSeeing(priorBelief(atlas), atlas, all));
}

/** The same fault on another plant of the kind, more or less of it. */
function recordOwn(
  plant: QuizPlant,
  run: ItemRun,
  place: number,
  channels: readonly string[],
  { passed: { step }, before }: Cut,
): StartRecord {
  const chance = createRandom(run.tolerances + 1 + place, `alike start at ${plant.id}`);
  const faults = run.faults.map((one) => ({
    ...one,
    severity: anotherSeverity(plant, one, nextUniform(chance)),
  }));
  const tolerances = pickTolerances(chance);
  const setup = setupOfRun(plant.plan, { ...run, tolerances, faults });
  const isOver = (passed: readonly PassedStep[]) =>
    passed.filter((one) => one.step === step).length > before;
  return recordStart(setup, plant.plan.serviceS, channels, isOver).record;
}

const kept = new WeakMap<QuizPlant, Map<string, StartRecord>>();

function recordParticle(
  plant: QuizPlant,
  p: number,
  onset: FaultOnset,
  channels: readonly string[],
): StartRecord {
  const records = kept.get(plant) ?? new Map<string, StartRecord>();
  kept.set(plant, records);
  const name = JSON.stringify([p, onset]);
  const known = records.get(name);
  if (known !== undefined) return known;
  const { atlas, plan, id } = plant;
  const cause = atlas.causeOf[p] as number;
  const fault = atlas.causes[cause]?.fault ?? null;
  const tolerances = p - (quizTablesOf(plant).spans[cause] as number);
  const severity = atlas.severities[p] as number;
  const faults = fault === null ? [] : [{ fault, severity, onset }];
  const setup = setupOfRun(plan, { plant: id, tolerances, faults, actions: [] });
  const { record } = recordStart(setup, plan.serviceS, channels);
  records.set(name, record);
  for (const oldest of records.keys()) {
    if (records.size <= MOST_KEPT) break;
    records.delete(oldest);
  }
  return record;
}

function sum(all: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let i = from; i < to; i++) total += all[i] as number;
  return total;
}
