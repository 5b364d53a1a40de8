/**
 * What the sequence does next, asked of a run where it stands. The right answer is what the run itself
 * does when nobody touches it; the others are what the machine would do were one or two of its inputs to
 * stand otherwise. Nothing is proved over other plants: it is a question for a class that watches this one.
 */
import { describePhase, type InputName } from '../../../machines/burner/index.ts';
import { createRun, inputReadings, type RunSetup, type TimedAction } from '../../engine/index.ts';
import type { ChoiceItem } from '../item/item.ts';
import { type Cut, cutBefore } from '../kinds/what-follows/cut.ts';
import { machineFrom } from '../kinds/what-follows/machine-from.ts';
import { otherOutcomes } from '../kinds/what-follows/other-outcomes.ts';
import { recordOf, type StartRecord } from '../kinds/what-follows/start-record.ts';
import { cutTells, otherOption, rightOption, toldInputs } from '../kinds/what-follows/words.ts';

export const NOT_ASKED = [
  /** It stays as it is for longer than a class would wait, or is locked out. */
  'nothing follows',
  /** Only one thing can come of it. */
  'nothing else could follow',
] as const;
export type NotAsked = (typeof NOT_ASKED)[number];

export type AskedHere =
  | {
      readonly ok: true;
      readonly item: ChoiceItem;
      /** False where nothing at this moment shows what will follow: it can only be guessed. */
      readonly shows: boolean;
      /** When it follows, s of the run. */
      readonly followsS: number;
    }
  | { readonly ok: false; readonly why: NotAsked };

/** Longer than this no class waits for an answer, s. */
const MOST_S = 400;
const PIECE_S = 5;
const AFTER_S = 0.2;
const MOST_OTHERS = 2;
const MOST_READINGS = 7;
const MOST_TRENDS = 3;

/**
 * @param log all that was done up to that moment, with what the scenario will do by itself
 * @param atS a moment of the run, s; rounded to the tenth in which it lies
 * @param place where the right answer stands among the options, 0 to 2
 */
export function whatFollowsHere(
  setup: RunSetup,
  log: readonly TimedAction[],
  atS: number,
  place: number,
): AskedHere {
  const whole = { ...setup, actions: [...log] };
  const run = createRun(whole);
  const frame = Math.max(1, Math.floor(atS / run.frameS + 1e-6));
  run.advanceTo(frame * run.frameS);
  const { step, sinceS, lockout } = run.status();
  if (lockout !== null || step === 'lockout') return { ok: false, why: 'nothing follows' };
  const endS = frame * run.frameS + MOST_S;
  while (run.status().sinceS === sinceS && run.timeS() < endS) run.advanceTo(run.timeS() + PIECE_S);
  if (run.status().sinceS === sinceS) return { ok: false, why: 'nothing follows' };
  run.advanceTo(run.timeS() + AFTER_S);

  const record = recordOf(run, channelsOfInputs(whole));
  const passed = record.passed.findIndex(({ fromS }) => fromS === sinceS);
  const cut = cutHere(whole, record, passed, frame);
  if (cut === null) return { ok: false, why: 'nothing follows' };
  const others = otherOutcomes(whole, record, cut.cut.frame, cut.cut.phase, cut.cut.right);
  if (others.length === 0) return { ok: false, why: 'nothing else could follow' };
  return {
    ok: true,
    item: itemOf(whole, record, cut.cut, others.slice(0, MOST_OTHERS), place),
    shows: cut.shows,
    followsS: cut.cut.passed.toS,
  };
}

function cutHere(
  setup: RunSetup,
  record: StartRecord,
  place: number,
  frame: number,
): { readonly cut: Cut; readonly shows: boolean } | null {
  const passed = record.passed[place];
  if (passed === undefined) return null;
  const proved = cutBefore(setup, record, place, passed.toS - frame * record.frameS);
  if (proved !== null) return { cut: proved, shows: true };
  const { phase } = machineFrom(setup, record, frame, record.words[frame] as number);
  const before = record.passed.slice(0, place).filter(({ step }) => step === passed.step).length;
  const cut = {
    passed,
    before,
    frame,
    sinceS: Math.max(0, frame * record.frameS - passed.fromS),
    phase,
    right: passed.next,
    standing: true,
    changes: [],
    heading: [],
  };
  return { cut, shows: false };
}

function itemOf(
  setup: RunSetup,
  record: StartRecord,
  cut: Cut,
  others: ReturnType<typeof otherOutcomes>,
  place: number,
): ChoiceItem {
  const word = record.words[cut.frame] as number;
  const { step } = cut.passed;
  const { variant } = setup.plant;
  const waited = describePhase(cut.phase, variant).waitsFor.map(({ input }) => input);
  const asked = distinct<InputName>([...waited, ...others.flatMap(({ flips }) => flips)]);
  const options = others.map((one) => otherOption(cut, word, one));
  const key = Math.max(0, Math.min(options.length, Math.floor(place)));
  options.splice(key, 0, rightOption({ sound: setup }, cut, word));
  return {
    id: `here/${setup.plant.id}`,
    kind: 'what follows',
    plant: setup.plant.id,
    topic: `what follows/${step}`,
    skills: ['sequence'],
    difficulty: 0,
    stem: {
      tells: cutTells({ sound: setup }, cut),
      asks: { code: 'quiz.follows.asks' },
      readings: toldInputs(step, word, asked.slice(0, MOST_READINGS)),
      shows: { chart: true, trends: trendsOf(setup, asked) },
    },
    run: null,
    caution: null,
    answer: 'choice',
    options,
    key,
  };
}

function trendsOf(setup: RunSetup, asked: readonly InputName[]): string[] {
  const readings = inputReadings(setup.plant, setup.profile);
  return distinct(asked.flatMap((input) => readings[input].channel ?? [])).slice(0, MOST_TRENDS);
}

function channelsOfInputs({ plant, profile }: RunSetup): readonly string[] {
  return distinct(
    Object.values(inputReadings(plant, profile)).flatMap(({ channel }) => channel ?? []),
  );
}

function distinct<T>(all: readonly T[]): T[] {
  return [...new Set(all)];
}
