/** What was read so far, each check at each moment once, with what it says of every particle. */
import { exactExp } from '../../numeric/index.ts';
import type { Atlas } from '../atlas/atlas.ts';
import { binName } from '../atlas/band.ts';
import { observationsOf } from '../atlas/observations.ts';
import type { Reading } from '../observe/reading.ts';
import { afterSeeing, type Belief, causeShares } from '../reasoning/belief.ts';
import type { Observation } from '../reasoning/particles.ts';
import type { CaseTables } from './case-tables.ts';
import type { Seen } from './decision.ts';
import { once } from './once.ts';
import type { Told } from './reasoning.ts';
import { isSign } from './sound-words.ts';

/** All that one check told at one moment, which counts as one thing. */
export interface Evidence {
  readonly check: string;
  /** As the atlas has it: what hangs on no step is `standing`. */
  readonly moment: string;
  /** When it was looked at. */
  readonly seenAt: string;
  readonly observations: readonly Observation[];
  readonly told: readonly Told[];
  /** Of each observation, whether a sound plant would have read otherwise. */
  readonly signs: readonly boolean[];
  /** What it adds to the logarithm of each particle's weight. */
  readonly delta: Float64Array;
  /** By how much it multiplies that weight. */
  readonly expDelta: () => Float64Array;
  /** Of each cause, its share at the outset times that. */
  readonly priorAgreeing: () => Float64Array;
  /** Read before work that ended what may have been the cause. */
  readonly ofOldPlant: boolean;
}

/** By `check@moment` of the atlas, for one state of the plant. */
export type EvidenceByName = ReadonlyMap<string, Evidence>;

export interface EvidenceTaken {
  readonly belief: Belief;
  readonly known: EvidenceByName;
  /** What of it was new. */
  readonly added: readonly Evidence[];
}

/**
 * Each thing counts once, however often it is looked at. One that comes out differently the second time
 * is of a fault that comes and goes: what is less like a sound plant is kept.
 */
export function takeEvidence(
  tables: CaseTables,
  belief: Belief,
  known: EvidenceByName,
  seen: readonly Seen[],
): EvidenceTaken {
  const next = new Map(known);
  const added: Evidence[] = [];
  const now = belief.slice();
  for (const evidence of seen.flatMap((one) => evidenceOf(tables, one))) {
    const name = `${evidence.check}@${evidence.moment}`;
    const before = next.get(name);
    if (before !== undefined && !isStranger(evidence, before)) continue;
    next.set(name, evidence);
    added.push(evidence);
    for (let p = 0; p < now.length; p++) {
      now[p] = (now[p] as number) + (evidence.delta[p] as number) - (before?.delta[p] ?? 0);
    }
  }
  return { belief: added.length === 0 ? belief : now, known: next, added };
}

function isStranger(evidence: Evidence, before: Evidence): boolean {
  const count = ({ signs }: Evidence) => signs.filter(Boolean).length;
  return count(evidence) > count(before);
}

/** Readings of one moment, check by check. */
function evidenceOf(tables: CaseTables, { moment, readings }: Seen): readonly Evidence[] {
  const { atlas, places, soundWords } = tables;
  const byName = new Map<string, { observation: Observation; reading: Reading }[]>();
  for (const reading of readings) {
    for (const observation of observationsOf(atlas, places, moment, [reading])) {
      const at = atlas.keys[observation.key] as Atlas['keys'][number];
      const name = `${at.check}@${at.moment}`;
      const others = byName.get(name) ?? [];
      if (others.some((one) => one.observation.key === observation.key)) continue;
      byName.set(name, [...others, { observation, reading }]);
    }
  }
  return [...byName.values()].map((all) => {
    const observations = all.map(({ observation }) => observation);
    const at = atlas.keys[observations[0]?.key ?? 0] as Atlas['keys'][number];
    const told = all.map(({ observation, reading }) => ({
      check: at.check,
      moment,
      aspect: reading.aspect,
      value: reading.value,
      word: binName(atlas.keys[observation.key]?.band ?? null, reading.value),
    }));
    return {
      check: at.check,
      moment: at.moment,
      seenAt: moment,
      observations,
      told,
      signs: told.map(({ word }, i) => isSign(soundWords[observations[i]?.key ?? -1] ?? [], word)),
      ofOldPlant: false,
      ...weighing(tables, afterSeeing(new Float64Array(atlas.causeOf.length), atlas, observations)),
    };
  });
}

/** What an addition to the logarithms does to the weights. */
export function weighing(
  { atlas, priorShares }: CaseTables,
  delta: Float64Array,
): Pick<Evidence, 'delta' | 'expDelta' | 'priorAgreeing'> {
  const expDelta = once(() => {
    // A reading has few answers, so few different additions.
    const powers = new Map<number, number>();
    return delta.map((add) => {
      const power = powers.get(add) ?? exactExp(add);
      powers.set(add, power);
      return power;
    });
  });
  const priorAgreeing = once(() => {
    const powers = expDelta();
    return causeShares(
      atlas,
      priorShares.map((share, p) => share * (powers[p] as number)),
    );
  });
  return { delta, expDelta, priorAgreeing };
}
