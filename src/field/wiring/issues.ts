import { createContactBoard } from '../contact.ts';
import { createWiring } from './create-wiring.ts';
import { listElements, type WiredParameters, type WiringElement } from './elements.ts';
import { EARTH } from './parameters.ts';

export const WIRING_ISSUE_CODES = [
  'no source',
  'name taken',
  'unknown element',
  'element twice',
  'uneven rung',
  'element across one wire',
  'load missing',
  'not wired',
  'wire with one end',
  'no way back',
  'short circuit',
  'unknown wire',
  'unknown terminal',
  'signal not heard',
] as const;

/** What makes a wiring that cannot work, and where it is said. */
export interface WiringIssue {
  readonly code: (typeof WIRING_ISSUE_CODES)[number];
  /** Path in the plant file. */
  readonly path: readonly (string | number)[];
  /** The element or wire it is about. */
  readonly name: string;
  /** What could have been meant. */
  readonly known: readonly string[];
}

const CONDUCTORS: readonly string[] = ['contact', 'output', 'fuse'];

interface Rungs {
  readonly elements: ReadonlyMap<string, WiringElement>;
  /** Placed elements, with their ends and where they are written. */
  readonly placed: readonly Placed[];
}

interface Placed {
  readonly element: WiringElement;
  readonly from: string;
  readonly to: string;
  readonly path: readonly (string | number)[];
}

/** Names first; only when all of these lead somewhere, what the circuits do. */
export function findWiringIssues(parameters: WiredParameters): WiringIssue[] {
  const { wiring } = parameters;
  const rungs = readRungs(parameters);
  const named = [...sourceIssues(parameters), ...nameIssues(parameters), ...rungIssues(parameters)];
  if (named.length > 0) return named;
  const circuits = [
    ...missing(parameters, rungs),
    ...looseEnds(parameters, rungs),
    ...shorts(parameters, rungs),
    ...placeIssues(parameters, rungs),
  ];
  if (circuits.length > 0 || wiring.sources.length === 0) return circuits;
  return unheard(parameters);
}

function issue(
  code: WiringIssue['code'],
  path: readonly (string | number)[],
  name: string,
  known: readonly string[] = [],
): WiringIssue {
  return { code, path: ['wiring', ...path], name, known };
}

function sourceIssues({ wiring }: WiredParameters): WiringIssue[] {
  const fed = wiring.sources.some(({ kind }) => kind === 'alternating');
  return fed ? [] : [issue('no source', ['sources'], 'alternating')];
}

function nameIssues(parameters: WiredParameters): WiringIssue[] {
  const seen = new Set<string>(parameters.wiring.sources.map(({ id }) => id));
  const doubled = new Set<string>();
  for (const { name } of listElements(parameters)) {
    if (seen.has(name)) doubled.add(name);
    seen.add(name);
  }
  return [...doubled].map((name) => issue('name taken', ['rungs'], name));
}

function rungIssues(parameters: WiredParameters): WiringIssue[] {
  const known = listElements(parameters).map(({ name }) => name);
  const used = new Set<string>();
  const issues: WiringIssue[] = [];
  parameters.wiring.rungs.forEach((rung, i) => {
    if (rung.length % 2 === 0) issues.push(issue('uneven rung', ['rungs', i], `${rung[0]}`));
    for (let j = 1; j < rung.length; j += 2) {
      const name = rung[j] as string;
      const path = ['rungs', i, j];
      if (!known.includes(name)) issues.push(issue('unknown element', path, name, known));
      else if (used.has(name)) issues.push(issue('element twice', path, name));
      used.add(name);
      if (rung[j - 1] === rung[j + 1]) {
        issues.push(issue('element across one wire', path, name));
      }
    }
  });
  return issues;
}

function readRungs(parameters: WiredParameters): Rungs {
  const elements = new Map(listElements(parameters).map((element) => [element.name, element]));
  const placed: Placed[] = [];
  parameters.wiring.rungs.forEach((rung, i) => {
    for (let j = 1; j + 1 < rung.length; j += 2) {
      const element = elements.get(rung[j] as string);
      if (element === undefined) continue;
      const from = rung[j - 1] as string;
      const to = rung[j + 1] as string;
      placed.push({ element, from, to, path: ['rungs', i, j] });
    }
  });
  return { elements, placed };
}

/** Terminals and loads that the plant's devices need and that no rung reaches. */
function missing({ field, wiring }: WiredParameters, { elements, placed }: Rungs): WiringIssue[] {
  const used = new Set(placed.map(({ element }) => element.name));
  const commands = new Set(field.relays.map(({ terminal }) => terminal));
  const loads = [
    'controller',
    ...(commands.has('upstreamValve') ? ['upstream-valve'] : []),
    ...(commands.has('downstreamValve') ? ['downstream-valve'] : []),
    ...(commands.has('pilotValve') ? ['pilot-valve'] : []),
    ...(commands.has('ventValve') ? ['vent-valve'] : []),
    ...(commands.has('spark') ? field.ignitionTransformers.map(({ id }) => id) : []),
  ];
  return [
    ...loads
      .filter((id) => !wiring.loads.some((load) => load.id === id))
      .map((id) => issue('load missing', ['loads'], id)),
    ...[...elements.values()]
      .filter(({ name, needed }) => needed && !used.has(name))
      .map(({ name }) => issue('not wired', ['rungs'], name)),
  ];
}

function looseEnds({ wiring }: WiredParameters, { placed }: Rungs): WiringIssue[] {
  const rails = new Set([EARTH, ...wiring.sources.flatMap(({ live, neutral }) => [live, neutral])]);
  const ends = new Map<string, Placed[]>();
  for (const one of placed) {
    for (const wire of [one.from, one.to]) {
      const here = ends.get(wire);
      if (here === undefined) ends.set(wire, [one]);
      else here.push(one);
    }
  }
  const issues: WiringIssue[] = [];
  for (const [wire, here] of ends) {
    const [only] = here;
    if (rails.has(wire) || here.length > 1 || only === undefined) continue;
    const [list, rung, at] = only.path;
    const place = (at as number) + (only.from === wire ? -1 : 1);
    issues.push(issue('wire with one end', [list as string, rung as number, place], wire));
  }
  if (issues.length > 0) return issues;
  for (const one of placed) {
    const back = reaches(one.from, one, ends, rails) && reaches(one.to, one, ends, rails);
    if (!back) issues.push(issue('no way back', one.path, one.element.name));
  }
  return issues;
}

/** Whether a rail can be reached from the wire without going through the element itself. */
function reaches(
  wire: string,
  without: Placed,
  ends: ReadonlyMap<string, readonly Placed[]>,
  rails: ReadonlySet<string>,
): boolean {
  const seen = new Set([wire]);
  const open = [wire];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (rails.has(next)) return true;
    for (const one of ends.get(next) ?? []) {
      if (one === without) continue;
      const other = one.from === next ? one.to : one.from;
      if (seen.has(other)) continue;
      seen.add(other);
      open.push(other);
    }
  }
  return false;
}

/** A source whose two ends meet through contacts alone when all are closed. */
function shorts({ wiring }: WiredParameters, { placed }: Rungs): WiringIssue[] {
  const conductors = placed.filter(({ element }) => CONDUCTORS.includes(element.kind));
  const bonded = wiring.sources.filter((source) => source.bonded).map(({ neutral }) => neutral);
  return wiring.sources.flatMap(({ live, neutral }, i): WiringIssue[] => {
    const joined = new Set([live]);
    for (let before = -1; before !== joined.size; ) {
      before = joined.size;
      for (const { from, to } of conductors) {
        if (joined.has(from)) joined.add(to);
        if (joined.has(to)) joined.add(from);
      }
    }
    const ends = [neutral, EARTH, ...bonded];
    return ends.some((wire) => joined.has(wire))
      ? [issue('short circuit', ['sources', i, 'live'], live)]
      : [];
  });
}

function placeIssues({ wiring }: WiredParameters, { placed }: Rungs): WiringIssue[] {
  const wires = new Set([
    EARTH,
    ...placed.flatMap(({ from, to }) => [from, to]),
    ...wiring.sources.flatMap(({ live, neutral }) => [live, neutral]),
  ]);
  const terminals = new Set(
    [...placed.map(({ element }) => element.name), ...wiring.sources.map(({ id }) => id)].flatMap(
      (name) => [`${name}:1`, `${name}:2`],
    ),
  );
  const wire = (name: string, path: readonly (string | number)[]) =>
    wires.has(name) || terminals.has(name) ? [] : [issue('unknown wire', path, name, [...wires])];
  const terminal = (name: string, path: readonly (string | number)[]) =>
    terminals.has(name) ? [] : [issue('unknown terminal', path, name, [...terminals])];
  return [
    ...wiring.cables.flatMap((cable, i) =>
      cable.wires.flatMap((name, j) =>
        wires.has(name) ? [] : [issue('unknown wire', ['cables', i, 'wires', j], name, [...wires])],
      ),
    ),
    ...wiring.joints.flatMap((joint, i) => terminal(joint.terminal, ['joints', i, 'terminal'])),
    ...wiring.bridges.flatMap(({ from, to }, i) => [
      ...wire(from, ['bridges', i, 'from']),
      ...wire(to, ['bridges', i, 'to']),
    ]),
    ...wiring.swaps.flatMap(({ one, other }, i) => [
      ...terminal(one, ['swaps', i, 'one']),
      ...terminal(other, ['swaps', i, 'other']),
    ]),
  ];
}

/** Wired from rail to rail, and still nothing arrives where the signal is measured. */
function unheard(parameters: WiredParameters): WiringIssue[] {
  const none = new Map<string, never>();
  const w = createWiring(parameters, none, none, none, createContactBoard());
  return w.channels
    .filter(({ builtPerUnit, from }) => from >= 0 && Math.abs(builtPerUnit) < 1e-6)
    .map(({ plan }) => issue('signal not heard', ['rungs'], plan.from));
}
