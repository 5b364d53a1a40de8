import { describe, expect, it } from 'vitest';
import { CAUSES, INPUTS, STEP_INFO, STEPS } from '../../machines/burner/index.ts';
import { isMessage, sayWord, slugOf } from '../../src/i18n/index.ts';

describe('sentences of the sequence', () => {
  it.each(STEPS)('the step %s has a title, and each of its states a purpose', (step) => {
    expect(isMessage(`step.${slugOf(step)}.title`)).toBe(true);
    for (const { meta } of STEP_INFO[step]) expect(isMessage(meta.purpose)).toBe(true);
  });

  it.each(INPUTS)('the terminal %s reads both ways', (input) => {
    expect(isMessage(`input.${input}`)).toBe(true);
    expect(isMessage(`input.${input}.not`)).toBe(true);
  });

  it.each(CAUSES)('the cause "%s" says what was seen and where to look', (cause) => {
    const code = `cause.${slugOf(cause)}`;
    for (const suffix of ['', '.seen', '.look']) expect(isMessage(code + suffix)).toBe(true);
  });

  it('shows an unknown word as it is', () => {
    expect(sayWord('cause', 'moon in the way')).toBe('moon in the way');
  });
});
