/** An exercise that is no shipped one: checked at the door, opened as any other. */
import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import { readGiven } from '../../../src/scenario/index.ts';
import { openHost } from './real-host.ts';

const healthy = library.scenarios.find(({ id }) => id === 'healthy-start');
if (healthy === undefined) throw new Error('no such start');
const OWN = { ...healthy, id: 'my-own-start', title: 'My own', seed: 77 };

describe('a library that is given', () => {
  it('lets in everything that is shipped, as it is', () => {
    const read = readGiven(JSON.parse(JSON.stringify(library)));
    expect(read).toEqual({ ok: true, given: library });
  });

  it('takes no notice of what tests expect', () => {
    const expecting = { ...OWN, expect: { lockout: 'none', by: 300 } };
    expect(readGiven({ scenarios: [expecting] })).toEqual({
      ok: true,
      given: { scenarios: [OWN] },
    });
  });

  it.each([
    [{ scenarios: [{ ...OWN, seed: 'seven' }] }, 'scenarios.0.seed'],
    [{ scenarios: [OWN, { ...OWN, faults: [{ fault: 'lens dirty' }] }] }, 'scenarios.1.faults.0'],
    [{ plays: [] }, ''],
    ['a text', ''],
  ])('names the place of what does not fit (%#)', (data, place) => {
    const read = readGiven(data);
    expect(read.ok ? 'taken' : read.place).toContain(place);
    expect(read.ok).toBe(false);
  });

  it('opens what is in it, with a seed of the class where there is one', () => {
    const given = { scenarios: [OWN] };
    const facts = (seed?: number) =>
      openHost({ kind: 'watch', id: OWN.id, given, ...(seed === undefined ? {} : { seed }) }).of(
        'opened',
      )[0]?.facts;
    expect(facts()?.scenario).toMatchObject({ id: OWN.id, title: 'My own', plant: OWN.plant });
    expect(facts()?.work.seed).toBe(77);
    expect(facts(5)?.work.seed).toBe(5);
    expect(facts(5)?.work.setupHash).not.toBe(facts()?.work.setupHash);
  });

  it('that does not fit is said, with the place, and opens nothing', () => {
    const host = openHost({
      kind: 'watch',
      id: OWN.id,
      given: { scenarios: [{ ...OWN, initial: { load: 7 } }] },
    });
    expect(host.of('opened')).toEqual([]);
    expect(host.of('failed')).toMatchObject([
      {
        failure: 'scenario does not load',
        detail: expect.stringContaining('scenarios.0.initial.load'),
      },
    ]);
  });

  it('that names a plant which is nowhere opens nothing', () => {
    const host = openHost({
      kind: 'watch',
      id: OWN.id,
      given: { scenarios: [{ ...OWN, plant: 'nowhere' }] },
    });
    expect(host.of('failed')).toMatchObject([{ failure: 'scenario does not load' }]);
  });
});
