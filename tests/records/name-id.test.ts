import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { idOfName, sha1OfText } from '../../src/records/name-id.ts';

describe('ids made from names', () => {
  it('hash any text as Node does', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
        expect(sha1OfText(text)).toBe(createHash('sha1').update(text, 'utf8').digest('hex'));
      }),
      { numRuns: 300, seed: 62 },
    );
  });

  it.each([0, 55, 56, 63, 64, 65, 119, 120, 1000])('hash %i characters as Node does', (count) => {
    const text = 'x'.repeat(count);
    expect(sha1OfText(text)).toBe(createHash('sha1').update(text).digest('hex'));
  });

  it('are those of RFC 4122, version 5, in the name space of addresses', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (name) => {
        const space = Buffer.from('6ba7b8119dad11d180b400c04fd430c8', 'hex');
        const bytes = createHash('sha1').update(space).update(name, 'utf8').digest();
        bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x50;
        bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
        const id = idOfName(name);
        expect(id.replaceAll('-', '')).toBe(bytes.subarray(0, 16).toString('hex'));
        expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
      }),
      { numRuns: 100, seed: 63 },
    );
  });
});
