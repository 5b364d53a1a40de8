import type { JudgedDecision, PartShare, Reasoning, Told } from '../../diagnosis/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import {
  answerWords,
  checkWords,
  lowerFirst,
  momentWords,
  type Names,
  partWords,
  sourceWords,
  toldWords,
} from '../../wording/index.ts';

/** Feedback on one decision, in pieces: what it was, what it was worth, and what came of it. */
export interface Feedback {
  readonly about: string;
  /** Sentences, in their order. */
  readonly said: readonly string[];
  /** Numbers, for who wants them. */
  readonly small: string;
}

/** Among the topics: the paper of the last visit. */
const LAST_VISIT = 'read sheet';
/** Expected gain from here on is much, bits. */
const MUCH_BITS = 0.5;
/** Less than this is nothing, minutes and bits. */
const LEAST_DEARER = 0.05;
const LEAST_BITS = 0.05;
/** More than so many readings at once are not told one by one. */
const MOST_TOLD = 2;
const MOST_SHOWN = 3;
/** A change of a share that is worth a word. */
const MOVED = 0.05;
/** Less than so many minutes dearer than the best is as good as the best. */
const DEARER_MINUTES = 1.5;

/**
 * What is said of a decision. It tells how what is likeliest has moved, never what it is: of parts, only
 * those that the learner has named are named.
 */
export function feedbackWords(
  names: Names,
  decision: JudgedDecision,
  suspects: readonly string[],
  units: UnitSystem,
): Feedback {
  return {
    about: aboutWords(names, decision),
    said: [...saidOf(names, decision, units), ...movedWords(decision, suspects)].filter(
      (each) => each !== '',
    ),
    small: smallWords(decision),
  };
}

/** How it has gone so far; empty before anything was found out or done. */
export function soFarWords({ decisions }: Pick<Reasoning, 'decisions'>): string {
  const checks = decisions.filter(({ kind }) => kind === 'check' || kind === 'watch');
  const early = decisions.filter(({ premature }) => premature);
  if (checks.length === 0 && early.length === 0) return '';
  return say('guide.so-far', {
    checks: checks.length,
    redundant: checks.filter(({ redundant }) => redundant).length,
    early: early.length,
  });
}

function aboutWords(names: Names, { kind, what, way }: JudgedDecision): string {
  switch (kind) {
    case 'check':
      return checkWords(names, what);
    case 'ask':
      return what === LAST_VISIT ? say('guide.about.sheet') : sayWord('job.topic', what);
    case 'work':
      return say('guide.about.work', { part: what, way: sayWord('guide.way', way) });
    case 'suspect':
      return say('guide.about.suspect', { part: partWords(what) });
    case 'claim':
      return say('guide.about.claim', { part: partWords(what) });
    default:
      return say(`guide.about.${kind}`);
  }
}

function saidOf(names: Names, decision: JudgedDecision, units: UnitSystem): readonly string[] {
  const refuted = refutedWords(names, decision, units);
  switch (decision.kind) {
    case 'arrive':
      return [readWords(names, decision, units)];
    case 'check':
    case 'watch':
      return [worthWords(decision), readWords(names, decision, units), betterWords(decision)];
    case 'work':
      return [say(decision.premature ? 'guide.work.early' : 'guide.work.carried'), refuted];
    case 'claim':
      return [say(decision.premature ? 'guide.claim.early' : 'guide.claim.carried'), refuted];
    case 'suspect':
      return [refuted === '' ? say('guide.suspect.open') : refuted];
    case 'ask':
      return [say('guide.ask')];
    case 'withdraw':
      return [say('guide.withdraw')];
  }
}

function worthWords({ bits, redundant }: JudgedDecision): string {
  if (redundant) return say('guide.worth.nothing');
  if (bits === null) return '';
  if (bits < LEAST_BITS) return say('guide.worth.right');
  return say(bits >= MUCH_BITS ? 'guide.worth.much' : 'guide.worth.little');
}

function readWords(names: Names, decision: JudgedDecision, units: UnitSystem): string {
  const { kind, what, moments, told, bits } = decision;
  if (told.length === 0) {
    if (moments.length === 0) return say('guide.read.nothing-yet');
    return (bits ?? 0) < LEAST_BITS ? '' : say('guide.read.sound');
  }
  if (kind === 'arrive') return say('guide.read.panel', { list: shownWords(names, told, units) });
  const all = togetherOf(told);
  const list = all
    .slice(0, MOST_TOLD)
    .map((each) => readTogether(names, each, what, units))
    .join('; ');
  const more = all.length - MOST_TOLD;
  return more > 0 ? say('guide.read.more', { list, more }) : say('guide.read', { list });
}

/** On arriving everything is from the panel: what it says is enough, a lockout and its step first. */
function shownWords(names: Names, told: readonly Told[], units: UnitSystem): string {
  const ofLockout = told.filter(({ check }) => check.startsWith('history'));
  const others = told.filter(
    ({ check, aspect }) =>
      !check.startsWith('history') && !(aspect === 'ends in' && ofLockout.length > 0),
  );
  const said = (each: Told) => lowerFirst(answerWords(names, each, units)).replace(/\.$/, '');
  const lockout = [...ofLockout].sort((a, b) => a.aspect.localeCompare(b.aspect)).map(said);
  return [...(lockout.length === 0 ? [] : [lockout.join(', ')]), ...new Set(others.map(said))]
    .slice(0, MOST_SHOWN)
    .join('; ');
}

/** What one check told at one moment. */
function togetherOf(told: readonly Told[]): readonly (readonly [Told, ...Told[]])[] {
  const groups = new Map<string, [Told, ...Told[]]>();
  for (const each of told) {
    const name = `${each.check}@${each.moment}`;
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [each]);
    else group.push(each);
  }
  return [...groups.values()];
}

/** Which check it was is said once, and not where it stands before it already. */
function readTogether(
  names: Names,
  told: readonly [Told, ...Told[]],
  about: string,
  units: UnitSystem,
): string {
  const [{ check, moment }] = told;
  const said = told
    .slice(0, MOST_TOLD)
    .map((each) => lowerFirst(answerWords(names, each, units)).replace(/\.$/, ''))
    .join(', ');
  const when = moment === 'standing' ? '' : momentWords(moment);
  const what = check === about ? '' : lowerFirst(sourceWords(names, check));
  const place = [what, when].filter((each) => each !== '').join(', ');
  return place === '' ? said : say('guide.read.at', { place, said });
}

function betterWords({ best, regretMinutes }: JudgedDecision): string {
  return best !== null && regretMinutes >= DEARER_MINUTES ? say('guide.better') : '';
}

function refutedWords(
  names: Names,
  { refutedBy, what }: JudgedDecision,
  units: UnitSystem,
): string {
  const [by] = refutedBy;
  return by === undefined
    ? ''
    : say('guide.refuted', { part: partWords(what), by: lowerFirst(toldWords(names, by, units)) });
}

/** How the likeliest moved, and those of the learner's own that were or are among them. */
function movedWords(decision: JudgedDecision, suspects: readonly string[]): readonly string[] {
  const { kind, before, after } = decision;
  if (kind !== 'check' && kind !== 'watch') return [];
  const change = (part: string) => shareIn(after, part) - shareIn(before, part);
  const gained = suspects.filter((part) => change(part) >= MOVED);
  const lost = suspects.filter((part) => change(part) <= -MOVED);
  return [
    leadWords(before, after),
    gained.length === 0 ? '' : say('guide.moved.gained', { parts: gained.join(', ') }),
    lost.length === 0 ? '' : say('guide.moved.lost', { parts: lost.join(', ') }),
  ];
}

function leadWords(before: readonly PartShare[], after: readonly PartShare[]): string {
  const [was] = before;
  const [is] = after;
  if (was === undefined || is === undefined) return '';
  if (was.part !== is.part) return say('guide.moved.another');
  if (is.share - was.share >= MOVED) return say('guide.moved.ahead');
  return say(was.share - is.share >= MOVED ? 'guide.moved.closer' : 'guide.moved.still');
}

function shareIn(shares: readonly PartShare[], part: string): number {
  return shares.find((each) => each.part === part)?.share ?? 0;
}

function smallWords({ bits, minutes, regretMinutes, kind }: JudgedDecision): string {
  if (bits === null || (kind !== 'check' && kind !== 'watch')) return '';
  const cost = { bits: bits.toFixed(2), minutes: minutes.toFixed(1) };
  return regretMinutes < LEAST_DEARER
    ? say('guide.small', cost)
    : say('guide.small.dearer', { ...cost, dearer: regretMinutes.toFixed(1) });
}
