import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { burnerMachine, CAUSES, PHASES } from '../../machines/index.ts';

const here = new URL('.', import.meta.url);
const written = readFileSync(new URL('../../machines/RULES.md', here), 'utf8');
const rules = [...written.matchAll(/^\| ((?:SQ|IN)-\d+) +\|/gm)].map(([, rule]) => rule as string);

interface Node {
  readonly transitions: ReadonlyMap<string, readonly Transition[]>;
  readonly always?: readonly Transition[];
  readonly states: Readonly<Record<string, Node>>;
}
interface Transition {
  readonly source: { readonly id: string };
  readonly eventType: string;
  readonly meta?: { readonly rule?: string };
  readonly actions: readonly (string | { readonly type: string; readonly params?: unknown })[];
}

function transitionsOf(node: Node): Transition[] {
  return [
    ...[...node.transitions.values()].flat(),
    ...(node.always ?? []),
    ...Object.values(node.states).flatMap(transitionsOf),
  ];
}
const transitions = transitionsOf(burnerMachine.root as unknown as Node);

describe('the numbered rules', () => {
  it('have each number once', () => {
    expect(rules).toHaveLength(new Set(rules).size);
    expect(rules.length).toBeGreaterThan(50);
  });
  it('are exactly those that the charts name', () => {
    const named = new Set([
      ...PHASES.flatMap(({ meta }) => meta.rules),
      ...transitions.flatMap(({ meta }) => meta?.rule ?? []),
    ]);
    const ofCharts = rules.filter((rule) => rule.startsWith('SQ'));
    expect([...named].sort()).toEqual([...ofCharts].sort());
  });
  it('head the title of a test each', () => {
    const tests = readdirSync(here)
      .filter((file) => file.endsWith('.test.ts'))
      .map((file) => readFileSync(new URL(file, here), 'utf8'))
      .join('\n');
    expect(rules.filter((rule) => !tests.includes(`[${rule}]`))).toEqual([]);
  });
  it('stand on every transition that an input or a timer can cause', () => {
    const silent = transitions.filter(
      ({ meta, eventType }) =>
        meta?.rule === undefined && (eventType === '' || eventType.startsWith('xstate.after')),
    );
    expect(silent.map(({ source, eventType }) => `${source.id} ${eventType}`)).toEqual([]);
  });
});

describe('the causes of a lockout', () => {
  it('are all named by a state or by supervision, but for the reset, which never locks out', () => {
    const source = JSON.stringify([
      PHASES.map(({ meta }) => meta.failsAs),
      transitions.map(({ actions }) => actions),
    ]);
    const unnamed = CAUSES.filter((cause) => !source.includes(`"${cause}"`));
    expect(unnamed).toEqual(['reset held']);
  });
});
