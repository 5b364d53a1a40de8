import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  DRILL_PHASES,
  drillMachine,
  JOB_PHASES,
  jobMachine,
  LESSON_PHASES,
  lessonMachine,
} from '../../../machines/index.ts';

const here = new URL('.', import.meta.url);
const written = readFileSync(new URL('../../../machines/RULES.md', here), 'utf8');
const rules = [...written.matchAll(/^\| (JB-\d+) +\|/gm)].map(([, rule]) => rule as string);

interface Node {
  readonly meta?: { readonly phase: string; readonly rules: readonly string[] };
  readonly transitions: ReadonlyMap<string, readonly { meta?: { rule: string } }[]>;
  readonly states: Readonly<Record<string, Node>>;
}
const charts = [jobMachine, drillMachine, lessonMachine].map(({ root }) => root as unknown as Node);
const phases = charts.flatMap(({ states }) => Object.values(states));
const transitions = [...charts, ...phases].flatMap((node) => [...node.transitions.values()].flat());

describe('the rules of the desk', () => {
  it('have each number once', () => {
    expect(rules).toHaveLength(new Set(rules).size);
    expect(rules.length).toBeGreaterThan(20);
  });
  it('are those that the charts name, and the one on coming back, which is kept outside them', () => {
    const named = new Set([
      ...phases.flatMap(({ meta }) => meta?.rules ?? []),
      ...transitions.flatMap(({ meta }) => meta?.rule ?? []),
      'JB-13',
    ]);
    expect([...named].sort()).toEqual([...rules].sort());
  });
  it('stand on every transition', () => {
    expect(transitions.filter(({ meta }) => meta?.rule === undefined)).toEqual([]);
  });
  it('head the title of a test each', () => {
    const tests = readdirSync(here)
      .filter((file) => file.endsWith('.test.ts'))
      .map((file) => readFileSync(new URL(file, here), 'utf8'))
      .join('\n');
    expect(rules.filter((rule) => !tests.includes(`[${rule}]`))).toEqual([]);
  });
});

describe('the phases', () => {
  it('are those of the lists, each described by its state', () => {
    const described = charts.map(({ states }) =>
      Object.entries(states).map(([name, { meta }]) => (meta?.phase === name ? name : 'other')),
    );
    expect(described).toEqual([JOB_PHASES, DRILL_PHASES, LESSON_PHASES]);
  });
});
