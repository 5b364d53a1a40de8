import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CLASS_PHASES, CLASS_REFUSALS, classMachine } from '../../../machines/index.ts';

const here = new URL('.', import.meta.url);
const written = readFileSync(new URL('../../../machines/RULES.md', here), 'utf8');
const rules = [...written.matchAll(/^\| (CL-\d+) +\|/gm)].map(([, rule]) => rule as string);

interface Node {
  readonly meta?: { readonly phase: string; readonly rules: readonly string[] };
  readonly transitions: ReadonlyMap<string, readonly Transition[]>;
  readonly states: Readonly<Record<string, Node>>;
}
interface Transition {
  readonly meta?: { readonly rule: string };
  readonly actions: readonly unknown[];
}
const phases = Object.entries((classMachine.root as unknown as Node).states);
const transitions = phases.flatMap(([, node]) => [...node.transitions.values()].flat());

describe('the rules of the class', () => {
  it('have each number once', () => {
    expect(rules).toHaveLength(new Set(rules).size);
    expect(rules.length).toBeGreaterThan(10);
  });
  it('are those that the chart names, and the one on coming back, which is kept outside it', () => {
    const named = new Set([
      ...phases.flatMap(([, { meta }]) => meta?.rules ?? []),
      ...transitions.flatMap(({ meta }) => meta?.rule ?? []),
      'CL-13',
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

describe('the chart', () => {
  it('has the phases of the list, each described by its state', () => {
    expect(phases.map(([name, { meta }]) => (meta?.phase === name ? name : 'other'))).toEqual(
      CLASS_PHASES,
    );
  });
  it('refuses in every word of the list, and answers every entry in every phase', () => {
    const source = JSON.stringify(transitions.map(({ actions }) => actions));
    expect(CLASS_REFUSALS.filter((word) => !source.includes(`"${word}"`))).toEqual([]);
    const types = [
      'begin',
      'freeze',
      'run',
      'next step',
      'rewind',
      'rewind by',
      'do',
      'when',
      'forget when',
      'lock tools',
      'hint',
      'poll',
      'show poll',
      'end poll',
      'spotlight',
      'project',
      'close',
      'open',
    ];
    for (const [name, node] of phases) {
      const known = [...node.transitions.keys()];
      if (!known.includes('*')) expect(known.sort(), name).toEqual(types.sort());
    }
  });
});
