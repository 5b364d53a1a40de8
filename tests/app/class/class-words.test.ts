import { describe, expect, it } from 'vitest';
import { CLASS_REFUSALS } from '../../../machines/class/index.ts';
import { codeText, errorText } from '../../../src/app/class/code-words.ts';
import { titleOfClass } from '../../../src/app/class/what-words.ts';
import { CLASS_ERRORS, GONE } from '../../../src/classroom/index.ts';

describe('what a class says', () => {
  it.each([...CLASS_ERRORS, ...CLASS_REFUSALS, ...GONE, 'not reached'])(
    'of "%s" is a whole sentence',
    (code) => {
      expect(errorText(code)).toMatch(/^[A-Z].*\.$/s);
    },
  );

  it('of its code is two groups, as one reads it aloud', () => {
    expect(codeText('ACDEFH')).toBe('ACD EFH');
  });

  it('never tells the title of a start, which may say what is wrong', () => {
    const start = { kind: 'start', id: 'a', title: 'Dead transformer', plant: 'dairy' } as const;
    expect(titleOfClass(start)).not.toContain('transformer');
    expect(titleOfClass({ ...start, kind: 'job', title: 'No steam' })).toBe('No steam');
  });
});
