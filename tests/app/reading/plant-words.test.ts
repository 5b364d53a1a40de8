import { describe, expect, it } from 'vitest';
import { CAUSES, STEPS } from '../../../machines/burner/index.ts';
import { canHappen, lookText, purposeText } from '../../../src/app/reading/plant-words.ts';

const withPilot = { hasPilot: true, vesselKind: 'water-tube' };
const school = { hasPilot: false, vesselKind: 'hot water' };

describe('words that fit the plant', () => {
  it('speak of no pilot where none is fitted', () => {
    const withoutOne = STEPS.filter((step) => !step.startsWith('pilot'));
    for (const step of withoutOne) expect(purposeText(step, false)).not.toMatch(/pilot/i);
    for (const cause of CAUSES.filter((each) => !each.startsWith('pilot'))) {
      expect(lookText(cause, school)).not.toMatch(/pilot/i);
    }
  });

  it('speak of temperature, not of pressure, where nothing boils', () => {
    expect(lookText('high limit open', school)).toMatch(/temperature/);
    expect(lookText('high limit open', withPilot)).toMatch(/pressure/);
  });

  it('are those of the sequence everywhere else', () => {
    expect(purposeText('purge', false)).toBe(purposeText('purge', true));
    expect(lookText('airflow not proved', school)).toBe(lookText('airflow not proved', withPilot));
  });
});

describe('a cause that stands on an input', () => {
  it('is named only of a plant that has the input', () => {
    expect(canHappen('water low', { plantInputs: ['highLimitMade'] })).toBe(false);
    expect(canHappen('water low', { plantInputs: ['waterAboveFirst'] })).toBe(true);
    expect(canHappen('airflow not proved', { plantInputs: [] })).toBe(true);
  });
});
