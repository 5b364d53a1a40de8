/** A class at a glance: where it stands, and what most of it has still to learn. */
import type { ClassResult, ConductOfClass } from './class-result.ts';

export interface ClassSummary {
  /** Seats with a result. */
  readonly seats: number;
  /** Of them, those that took it to its end. */
  readonly finished: number;
  /** Of each seat's best attempt, 0 to 1; null where nothing is scored. */
  readonly medianOutcome: number | null;
  readonly medianMinutes: number | null;
  /** Share of the seats, of those where it is known, that found the cause by readings, 0 to 1. */
  readonly foundByReadings: number | null;
  readonly foundByTrying: number | null;
  /** What was done unsafely or carelessly, by how many seats; the most frequent first. */
  readonly conduct: readonly ConductCount[];
  /** Parts of causes that were not named, by how many seats. */
  readonly missed: readonly { readonly part: string; readonly seats: number }[];
  /** Seats with something that was not believed. */
  readonly refused: readonly number[];
}
export interface ConductCount {
  readonly rule: string;
  readonly severity: ConductOfClass['severity'];
  /** One of them, to say what it is. */
  readonly what: ConductOfClass['what'];
  readonly seats: number;
}

export function summaryOfClass(results: readonly ClassResult[]): ClassSummary {
  const best = bestOfSeats(results);
  const outcomes = best.flatMap(({ outcome }) => outcome ?? []);
  const found = best.flatMap(({ parts }) => parts.found ?? []);
  const shareOf = (way: string) =>
    found.length === 0 ? null : found.filter((one) => one === way).length / found.length;
  return {
    seats: best.length,
    finished: best.filter(({ finished }) => finished).length,
    medianOutcome: medianOf(outcomes),
    medianMinutes: medianOf(best.flatMap(({ parts }) => parts.minutes ?? [])),
    foundByReadings: shareOf('by readings'),
    foundByTrying: shareOf('by trying parts'),
    conduct: conductOf(results),
    missed: missedOf(best),
    refused: seatsOf(results.filter(({ refused }) => refused)),
  };
}

/** One result a seat: the best attempt that was believed, of equals the first; in the order of seats. */
export function bestOfSeats(results: readonly ClassResult[]): readonly ClassResult[] {
  const bySeat = new Map<string, ClassResult>();
  for (const result of [...results].sort(inOrder)) {
    const key = `${result.seat} ${result.what.kind} ${result.what.id}`;
    const known = bySeat.get(key);
    if (known === undefined || worthOf(result) > worthOf(known)) bySeat.set(key, result);
  }
  return [...bySeat.values()];
}

/** By seat, then as they were begun. */
export function inOrder(a: ClassResult, b: ClassResult): number {
  if (a.seat !== b.seat) return a.seat - b.seat;
  if (a.startedISO !== b.startedISO) return a.startedISO < b.startedISO ? -1 : 1;
  return a.attempt - b.attempt;
}

function worthOf({ outcome }: ClassResult): number {
  return outcome ?? -1;
}

/** The middle one, or the mean of the two in the middle. */
function medianOf(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.floor((sorted.length - 1) / 2)];
  return upper === undefined || lower === undefined ? null : (lower + upper) / 2;
}

function conductOf(results: readonly ClassResult[]): readonly ConductCount[] {
  const rules = new Map<string, { first: ConductOfClass; seats: Set<number> }>();
  for (const { seat, conduct } of results) {
    for (const finding of conduct) {
      const key = `${finding.rule} ${finding.severity}`;
      const known = rules.get(key);
      if (known === undefined) rules.set(key, { first: finding, seats: new Set([seat]) });
      else known.seats.add(seat);
    }
  }
  return [...rules.values()]
    .map(({ first: { rule, severity, what }, seats }) => ({
      rule,
      severity,
      what,
      seats: seats.size,
    }))
    .sort((a, b) => b.seats - a.seats || weightOf(b) - weightOf(a) || (a.rule < b.rule ? -1 : 1));
}

function weightOf({ severity }: ConductCount): number {
  return severity === 'unsafe' ? 1 : 0;
}

function missedOf(best: readonly ClassResult[]): ClassSummary['missed'] {
  const parts = new Map<string, Set<number>>();
  for (const { seat, missed } of best) {
    for (const part of missed) parts.set(part, (parts.get(part) ?? new Set()).add(seat));
  }
  return [...parts]
    .map(([part, seats]) => ({ part, seats: seats.size }))
    .sort((a, b) => b.seats - a.seats || (a.part < b.part ? -1 : 1));
}

function seatsOf(results: readonly ClassResult[]): number[] {
  return [...new Set(results.map(({ seat }) => seat))].sort((a, b) => a - b);
}
