/** The words by which conduct knows parts, looks and contacts are those of the plants. */
import { describe, expect, it } from 'vitest';
import { jointsOf } from '../../../src/bench/conduct/gas-places.ts';
import { INSIDE_PARTS, LOOKS_INSIDE } from '../../../src/bench/conduct/inside-work.ts';
import { interlocksBetween, lessSafe, shownBy } from '../../../src/bench/conduct/interlocks.ts';
import { CHECKS } from '../../../src/bench/index.ts';
import { createRun, describeWiring, LOOK_WHATS, PROOF_WORDS } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';

const setups = ['healthy-start', 'laundry-healthy-start', 'school-healthy-start'].map((id) =>
  shippedSetup(id),
);
const runs = setups.map((setup) => createRun(setup));
const parts = runs.flatMap((run) => run.parts());
const names = new Set(parts.map(({ part }) => part));

describe('parts', () => {
  it('that open the gas train have joints on every plant that has them', () => {
    for (const run of runs) {
      const nowhere = run
        .parts()
        .filter(
          ({ part, opens }) => opens === 'gas' && jointsOf(run.setup.plant, part).length === 0,
        );
      expect(
        nowhere.map(({ part }) => part),
        run.setup.plant.id,
      ).toEqual([]);
    }
  });
  it('inside fan and burner are parts of some plant', () => {
    expect([...INSIDE_PARTS].filter((part) => !names.has(part))).toEqual([]);
  });
  it('with a switch point that stops the burner are known as protective, and by what shows them', () => {
    const wanted =
      /^(airflow|low-gas|high-gas|furnace pressure) switch$|^high limit$|proof of closure$/;
    const dials = runs.flatMap((run) => run.settings().map(({ part }) => part));
    const limits = [...new Set(dials)].filter((part) => wanted.test(part));
    expect(limits.length).toBeGreaterThanOrEqual(7);
    expect(limits.filter((part) => lessSafe(part) === null)).toEqual([]);
    const proofs: readonly string[] = Object.values(PROOF_WORDS);
    expect(limits.filter((part) => !proofs.includes(shownBy(part) ?? ''))).toEqual([]);
  });
});

describe('looks', () => {
  it('that need opening cost more than a glance, the others do not', () => {
    for (const run of runs) {
      for (const what of run.lookPlaces()) {
        const minutes = CHECKS.find((check) => check.what === `look: ${what}`)?.minutes ?? 0;
        expect(minutes > 1, what).toBe(run.look(what)?.needsOpening === true);
      }
    }
  });
  it('inside are looks that there are', () => {
    const known: readonly string[] = LOOK_WHATS;
    expect([...LOOKS_INSIDE].filter((what) => !known.includes(what))).toEqual([]);
  });
});

describe('contacts', () => {
  it('that feed a proof or a limit protect, those that ask for heat do not', () => {
    for (const { plant } of setups) {
      const { elements } = describeWiring(plant);
      const bypassed = (name: string) => {
        const element = elements.find((one) => one.name === name);
        return element === undefined
          ? null
          : interlocksBetween(plant, element.from, element.to).includes(name);
      };
      for (const name of ['airflow', 'low-gas', 'high-limit', 'emergency-stop']) {
        expect(bypassed(name), `${plant.id} ${name}`).toBe(true);
      }
      for (const name of ['burner-switch', 'operating-control', 'reset-button']) {
        expect(bypassed(name), `${plant.id} ${name}`).toBe(false);
      }
    }
  });
});
