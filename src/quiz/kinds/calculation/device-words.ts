import type { Term } from '../../item/statement.ts';

/** An element of the ladder as a thing of its own; an output is the controller's. */
export function deviceTerm(name: string): Term {
  const words = deviceNamed(name);
  return name.startsWith('out.')
    ? { is: 'statement', statement: { code: 'quiz.sum.volts.output', with: { device: words } } }
    : words;
}

/** What a technician calls the thing of this id in the ladder or the plant: `low-gas` is the low-gas switch. */
export function deviceNamed(name: string): Term {
  const word = name
    .replace(/^(?:out|in|ai)\./, '')
    .replace(/[-.]/g, ' ')
    .replace(/([a-z])([A-Z])/g, (_all, before: string, after: string) => `${before} ${after}`)
    .toLowerCase();
  return { is: 'word', of: 'told.device', word };
}
