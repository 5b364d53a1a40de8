import type { Item, Statement, Term } from '../../quiz/index.ts';
import { partsOf } from '../../wording/index.ts';

const EARTH = 'earth';

/**
 * Places of the wiring that an item names before it is answered, each once: wires, and terminals as
 * `fan-relay.coil:1`. Whoever is to judge a reading there has to see where it is.
 */
export function namedPlaces(item: Item): readonly string[] {
  const { tells, asks, readings } = item.stem;
  const checks = [
    ...[...tells, asks, ...saidBy(item)].flatMap(checksOf),
    ...readings.map(({ check }) => check),
  ];
  return [...new Set(checks.flatMap(placesOf))];
}

function saidBy(item: Item): readonly Statement[] {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return item.options.map(({ says }) => says);
    case 'order':
      return item.steps.map(({ says }) => says);
    case 'number':
      return [];
  }
}

function checksOf(statement: Statement): readonly string[] {
  return Object.values(statement.with ?? {}).flatMap(checksIn);
}

function checksIn(term: Term): readonly string[] {
  if (typeof term !== 'object') return [];
  switch (term.is) {
    case 'check':
      return [term.check];
    case 'reading':
    case 'said':
      return [term.told.check];
    case 'statement':
      return checksOf(term.statement);
    case 'list':
      return term.of.flatMap(checksIn);
    default:
      return [];
  }
}

function placesOf(check: string): readonly string[] {
  const { what, place, other } = partsOf(check);
  if (what !== 'volts' && what !== 'continuity') return [];
  return [place, other].filter((each) => each !== '' && each !== EARTH);
}
