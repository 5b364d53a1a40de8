import { describe, expect, it } from 'vitest';
import type { FieldParameters } from '../../../src/field/index.ts';
import { findWiringIssues, WIRING_ISSUE_CODES } from '../../../src/field/wiring/index.ts';
import { library } from '../../support/library.ts';

type Wiring = FieldParameters['wiring'];
const dairy = library.plants.find(({ id }) => id === 'dairy') as FieldParameters;
const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

const SPOILT: readonly [(typeof WIRING_ISSUE_CODES)[number], (wiring: Wiring) => void][] = [
  ['no source', ({ sources }) => sources.splice(0, 1)],
  ['name taken', ({ contacts }) => contacts.push({ id: 'low-gas', made: true })],
  ['unknown element', ({ rungs }) => (rungs[0] as string[]).splice(1, 1, 'isolater')],
  ['element twice', ({ rungs }) => rungs.push(['L1', 'isolator', 'N'])],
  ['uneven rung', ({ rungs }) => (rungs[0] as string[]).push('heat-lamp')],
  ['element across one wire', ({ rungs }) => replace(rungs, 'power-lamp', ['L1', 'L1'])],
  [
    'load missing',
    ({ loads, rungs }) => {
      loads.splice(
        loads.findIndex(({ id }) => id === 'vent-valve'),
        1,
      );
      drop(rungs, 'vent-valve');
    },
  ],
  ['not wired', ({ rungs }) => drop(rungs, 'in.controlFuseMade')],
  ['wire with one end', ({ rungs }) => replace(rungs, 'heat-lamp', ['13', 'nowhere'])],
  ['no way back', ({ rungs }) => rungs.push(['a', 'second-loop', 'b', 'third-loop', 'a'])],
  [
    'short circuit',
    ({ rungs, contacts }) => {
      contacts.push({ id: 'shovel', made: true });
      rungs.push(['L1', 'shovel', 'N']);
    },
  ],
  ['unknown wire', ({ cables }) => (cables[0] as { wires: string[] }).wires.push('99')],
  ['unknown terminal', ({ joints }) => joints.push({ terminal: 'nobody:1', ohm: 5 })],
  [
    'signal not heard',
    ({ rungs }) => {
      drop(rungs, 'flame-sensor.signal');
      rungs.push(['L1', 'flame-sensor.signal', 'N'], ['P5', 'ai.flame-sensor', 'M24']);
    },
  ],
];

describe('findWiringIssues', () => {
  it.each(library.plants.map((plant) => [plant.id, plant] as const))(
    'finds nothing wrong with %s',
    (_id, plant) => {
      expect(findWiringIssues(plant)).toEqual([]);
    },
  );

  it('has a spoilt plant for each of its codes', () => {
    expect(SPOILT.map(([code]) => code)).toEqual([...WIRING_ISSUE_CODES]);
  });

  it.each(SPOILT)('says %s', (code, spoil) => {
    const parameters = copyOf(dairy);
    if (code === 'no way back') {
      parameters.wiring.contacts.push({ id: 'second-loop', made: true });
      parameters.wiring.contacts.push({ id: 'third-loop', made: true });
    }
    spoil(parameters.wiring);
    expect(findWiringIssues(parameters).map((issue) => issue.code)).toContain(code);
  });

  it('names the place and what was perhaps meant', () => {
    const parameters = copyOf(dairy);
    (parameters.wiring.rungs[2] as string[])[1] = 'in.controlFuse';
    const [first] = findWiringIssues(parameters);
    expect(first).toMatchObject({ path: ['wiring', 'rungs', 2, 1], name: 'in.controlFuse' });
    expect(first?.known).toContain('in.controlFuseMade');
  });
});

function rungWith(rungs: string[][], element: string): [string[], number] {
  for (const rung of rungs) {
    const at = rung.indexOf(element);
    if (at >= 0) return [rung, at];
  }
  throw new Error(`no rung with ${element}`);
}

/** Takes the element, and with it its rung, out. */
function drop(rungs: string[][], element: string): void {
  rungs.splice(rungs.indexOf(rungWith(rungs, element)[0]), 1);
}

/** Puts the element into a rung of its own between two wires. */
function replace(rungs: string[][], element: string, [from, to]: readonly [string, string]): void {
  const [rung, at] = rungWith(rungs, element);
  const rest = rung.slice(0, at);
  rungs.splice(rungs.indexOf(rung), 1);
  if (rest.length >= 3) rungs.push(rest);
  rungs.push([from, element, to]);
}
