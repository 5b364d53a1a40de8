import { describe, expect, it } from 'vitest';
import { createRun, type Run, type TimedAction } from '../../src/engine/index.ts';
import { library, shippedSetup } from '../support/library.ts';

const STARTS = library.plants.map(({ id }) =>
  id === 'dairy' ? 'healthy-start' : `${id}-healthy-start`,
);

function runWith(scenario: string, actions: readonly TimedAction[], untilS: number): Run {
  const setup = shippedSetup(scenario);
  const run = createRun({ ...setup, actions: [...setup.actions, ...actions] });
  run.advanceTo(untilS);
  return run;
}
const stepsFrom = (run: Run, t: number) =>
  run.events().flatMap((event) => (event.type === 'step' && event.t >= t ? [event.step] : []));

describe.each(STARTS)('%s, when the supply goes', (scenario) => {
  it.each([0.2, 30])(
    'in service for %d s: shuts down by that, and starts again by itself',
    (outS) => {
      const run = runWith(
        scenario,
        [
          { t: 250, type: 'supply', on: false },
          { t: 250 + outS, type: 'supply', on: true },
        ],
        290,
      );
      const waits = outS > 25 ? ['standby'] : [];
      const expected = ['run down', 'post-purge', ...waits, 'at-rest check'];
      expect(stepsFrom(run, 250).slice(0, expected.length)).toEqual(expected);
      expect(run.status().lockout).toBeNull();
    },
  );

  it('at rest: nothing locks out, and a stop pressed meanwhile is seen once there are volts again', () => {
    const run = runWith(
      scenario,
      [
        { t: 2, type: 'supply', on: false },
        { t: 3, type: 'emergency-stop', pressed: true },
      ],
      20,
    );
    expect(run.status()).toMatchObject({ step: 'standby', lockout: null });
    run.act({ type: 'supply', on: true });
    run.advanceTo(21);
    expect(run.status()).toMatchObject({ step: 'lockout', lockout: 'emergency stop' });
  });
});
