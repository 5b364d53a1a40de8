import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import { wiringFacts } from '../../../src/app/session/wiring-facts.ts';
import { TERMINAL_PX } from '../../../src/view/ladder/layout-pen.ts';
import { symbolsOf } from '../../../src/view/ladder/symbol-sets.ts';
import { SYMBOL_SETS } from '../../../src/view/ladder/types.ts';

const ELEMENTS = library.plants.flatMap((plant) => wiringFacts(plant).elements);

describe.each(SYMBOL_SETS)('the symbols of %s', (set) => {
  const symbolOf = symbolsOf(set);

  it('fit between the terminals of every element of the shipped plants', () => {
    for (const element of ELEMENTS) expect(symbolOf(element).reach).toBeLessThan(TERMINAL_PX);
  });

  it('tell what carries from what does not, for every element, without colour', () => {
    for (const element of ELEMENTS) {
      const { made, open } = symbolOf(element);
      expect(JSON.stringify(made), element.name).not.toBe(JSON.stringify(open));
    }
  });

  it('tell a break contact from a make contact', () => {
    const drawn = (breaks: boolean) => JSON.stringify(symbolOf({ kind: 'contact', breaks }));
    expect(drawn(true)).not.toBe(drawn(false));
  });

  it('tell apart what moves a contact', () => {
    const operators = ['push button', 'hand switch', 'pressure', 'temperature', 'level'] as const;
    const drawn = operators.map((operator) =>
      JSON.stringify(symbolOf({ kind: 'contact', operator })),
    );
    expect(new Set(drawn).size).toBe(operators.length);
  });
});

describe('the two sets', () => {
  it('draw contacts, coils, fuses and transformers each in their own way', () => {
    for (const kind of ['contact', 'coil', 'fuse', 'transformer', 'burden']) {
      const [iec, na] = SYMBOL_SETS.map((set) => JSON.stringify(symbolsOf(set)({ kind })));
      expect(na, kind).not.toBe(iec);
    }
  });

  it('North American: the coil of a relay is a circle, a solenoid is a zigzag', () => {
    const symbolOf = symbolsOf('NA');
    const relay = symbolOf({ name: 'fan-relay.coil', kind: 'coil' });
    const valve = symbolOf({ name: 'pilot-valve', kind: 'coil' });
    expect(JSON.stringify(relay.always)).toContain('a14 14');
    expect(JSON.stringify(valve)).not.toContain('a14 14');
  });
});
