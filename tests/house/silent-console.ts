/** A test that warns or reports an error without saying that it would has failed. */
import { afterEach, beforeEach, expect, vi } from 'vitest';

const said: string[] = [];

beforeEach(() => {
  said.length = 0;
  for (const level of ['warn', 'error'] as const) {
    vi.spyOn(console, level).mockImplementation((...words: unknown[]) => {
      said.push(`console.${level}: ${words.map(String).join(' ')}`);
    });
  }
});

afterEach(() => {
  expect(said, 'unexpected console messages').toEqual([]);
});
