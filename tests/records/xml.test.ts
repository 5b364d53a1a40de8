import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { qtiFiles, withoutForbidden } from '../../src/records/index.ts';
import { xmllint } from './qti-schemas.ts';
import { CHOICE, paperOf } from './samples.ts';

const text = fc.string({
  unit: fc.oneof(
    fc.constantFrom(
      ...'<>&"\'\r\n\t]]>\u0000\u000b\u001f\ufffe',
      '\ud800',
      '\udfff',
      '&amp;',
      '{',
      '$1',
    ),
    fc.string({ minLength: 1, maxLength: 1, unit: 'binary' }),
  ),
  minLength: 1,
  maxLength: 20,
});

/** What an XML reader makes of the first prompt: entities resolved, line ends as one. */
function promptOf(xml: string): string {
  const inside = /<prompt>([^<]*)<\/prompt>/.exec(xml)?.[1] ?? '';
  return resolved(inside.replace(/\r\n?/g, '\n'));
}

function titleOf(xml: string): string {
  const inside = / title="([^"<]*)"/.exec(xml)?.[1] ?? '';
  return resolved(inside.replace(/[\t\n\r]/g, ' '));
}

function resolved(said: string): string {
  return said.replace(/&(?:#(\d+)|(\w+));/g, (_, number: string | undefined, name: string) =>
    number === undefined
      ? ({ amp: '&', lt: '<', gt: '>', quot: '"' }[name] ?? `unknown ${name}`)
      : String.fromCodePoint(Number(number)),
  );
}

function itemOf(asks: string): string {
  return qtiFiles(paperOf([{ ...CHOICE, asks }])).get('items/item-cause_2f_dairy_2f_12.xml') ?? '';
}

describe('any text in XML', () => {
  it('comes back from element and attribute, but for what XML 1.0 forbids', () => {
    fc.assert(
      fc.property(text, (asks) => {
        const xml = itemOf(asks);
        expect(promptOf(xml)).toBe(withoutForbidden(asks));
        expect(titleOf(xml)).toBe(`1. ${withoutForbidden(asks)}`);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there.
        expect(xml).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/);
      }),
      { numRuns: 400, seed: 64 },
    );
  });

  it('comes back from another reader of XML too', (test) => {
    const texts = fc.sample(text, { numRuns: 25, seed: 65 });
    for (const asks of texts) {
      const read = xmllint(['--xpath', 'string(//*[local-name()="prompt"])', '-'], itemOf(asks));
      if (read === null) return test.skip('xmllint is not here: libxml2-utils has it');
      // The reader ends its answer with a line end of its own.
      expect(read.stdout.replace(/\n$/, '')).toBe(withoutForbidden(asks));
    }
  });
});
