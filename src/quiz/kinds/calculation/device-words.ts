import type { Term } from '../../item/statement.ts';

/** An element of the ladder as a thing of its own; an output is the controller's. */
export function deviceTerm(name: string): Term {
  const words = deviceWords(name);
  return name.startsWith('out.')
    ? { is: 'statement', statement: { code: 'quiz.sum.volts.output', with: { device: words } } }
    : words;
}

/** An element of the ladder as it stands within a sentence: `fan-relay.contact` is "fan relay contact". */
export function deviceWords(name: string): string {
  return name
    .replace(/^(?:out|in|ai)\./, '')
    .replace(/[-.]/g, ' ')
    .replace(/([a-z])([A-Z])/g, (_all, before: string, after: string) => `${before} ${after}`)
    .toLowerCase();
}
