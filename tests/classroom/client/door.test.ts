import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { joinAtDoor, readTypedCode, takeSeat } from '../../../src/classroom/client/index.ts';
import { CODE_LENGTH, CODE_LETTERS } from '../../../src/classroom/index.ts';
import { createFakeServer } from './fake-server.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('the door of a class', () => {
  it('gives a seat to whoever has a code and a name, or a number and its PIN', async () => {
    const { openWire } = createFakeServer();
    const joining = joinAtDoor({ code: 'ACDEFH', nickname: 'Kim' }, { openWire });
    const taking = takeSeat({ code: 'ACDEFH', seat: 3, pin: '4711' }, { openWire });
    await vi.advanceTimersByTimeAsync(100);
    expect(await joining).toMatchObject({ ok: true, seat: 3, pin: '4711' });
    expect(await taking).toMatchObject({ ok: true, seat: 3 });
  });

  it.each([
    ['too many attempts', 'too many attempts'],
    ['other version', 'other version'],
    ['websocket error', 'not reached'],
  ])('says of "%s" that it is "%s"', async (refuses, error) => {
    const server = createFakeServer();
    server.refuses = refuses;
    const joining = joinAtDoor({ code: 'ACDEFH', nickname: 'Kim' }, { openWire: server.openWire });
    await vi.advanceTimersByTimeAsync(100);
    expect(await joining).toEqual({ ok: false, error });
  });

  it('is not reached when no answer comes', async () => {
    const server = createFakeServer();
    server.losesQuestions = true;
    const joining = joinAtDoor({ code: 'ACDEFH', nickname: 'Kim' }, { openWire: server.openWire });
    await vi.advanceTimersByTimeAsync(10_000);
    expect(await joining).toEqual({ ok: false, error: 'not reached' });
  });
});

describe('a typed code', () => {
  it('is read in any case, with spaces and strokes anywhere', () => {
    const letters = fc.constantFrom(...CODE_LETTERS);
    const sign = fc.tuple(letters, fc.boolean(), fc.constantFrom('', ' ', '-', '  ', ' – '));
    fc.assert(
      fc.property(fc.array(sign, { minLength: CODE_LENGTH, maxLength: CODE_LENGTH }), (signs) => {
        const typed = signs
          .map(([one, low, gap]) => (low ? one.toLowerCase() : one) + gap)
          .join('');
        expect(readTypedCode(typed)).toEqual({
          code: signs.map(([one]) => one).join(''),
          wrong: [],
        });
      }),
      { seed: 12 },
    );
  });

  it('says which signs stand in no code, each once', () => {
    expect(readTypedCode('ac0d o08!')).toEqual({ code: 'ACD', wrong: ['0', 'O', '8', '!'] });
  });
});
