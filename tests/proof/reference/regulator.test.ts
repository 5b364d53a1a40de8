import { describe, expect, it } from 'vitest';
import {
  createGasTrain,
  type GasTrain,
  prepareGasTrain,
  stepGasTrain,
} from '../../../src/plant/gas/index.ts';
import {
  AMBIENT_PA,
  cock,
  edgeOf,
  METHANE,
  pressureOf,
  regulator,
} from '../../plant/gas/fixtures.ts';
import { readTable } from './table.ts';

interface Train {
  readonly supplyPa: number;
  readonly volumeDm3: number;
  readonly cockM2: number;
  readonly ratedKgS: number;
  readonly regulator: Readonly<Record<'areaM2' | 'setpointPa' | 'droopPa', number>> &
    Parameters<typeof regulator>[4];
}
interface Move extends Train {
  readonly shows: string;
  readonly openingBefore: number;
  readonly openingAfter: number;
  readonly moveS: number;
  readonly restPa: number;
  readonly rows: readonly { readonly atS: number; readonly gaugePa: number }[];
}
interface Table {
  readonly droop: Train & {
    readonly rows: readonly { readonly opening: number; readonly gaugePa: number }[];
  };
  readonly moves: readonly Move[];
}

const { droop, moves } = readTable<Table>('regulator');
/** The simulator rounds stops and seat by this much of the stroke, so that Newton can take them. */
const CORNER_STROKE = 0.02;
/** First order in time: a step of 10 ms against lags of 50 ms and swings of a second. */
const STEP_SHARE = 0.025;
const SHORT_STEP_SHARE = 0.002;
/**
 * Held at a stop, a stroke with little way to go in a step is rounded anew in each: there shorter
 * steps are not nearer, and are not asked for.
 */
const AT_A_STOP = ['lock-up', 'creep', 'a supply below'];

function trainFor(of: Train, opening: number): GasTrain {
  const { areaM2, setpointPa, droopPa, ...rest } = of.regulator;
  return createGasTrain({
    mixture: METHANE,
    temperatureK: 288.15,
    supply: {
      pressureGaugePa: of.supplyPa,
      ratedFlowKgS: of.ratedKgS,
      ratedDropPa: 10,
      volumeDm3: 1000,
      airDm3: 0,
    },
    nodes: [
      {
        id: 'outlet',
        volumeDm3: of.volumeDm3,
        startGaugePa: setpointPa - 0.5 * droopPa,
        escapeDm3H: 0,
      },
    ],
    edges: [
      regulator(
        { id: 'regulator', from: 'supply', to: 'outlet' },
        areaM2,
        setpointPa,
        droopPa,
        rest,
      ),
      { ...cock({ id: 'load', from: 'outlet', to: 'atmosphere' }, of.cockM2), opening },
    ],
  });
}

function settle(train: GasTrain): number {
  for (let i = 0; i < 6000; i++) stepGasTrain(train, 0, AMBIENT_PA, 0.01);
  return pressureOf(train, 'outlet');
}

function moveCock(of: Move, stepS: number): number[] {
  const train = trainFor(of, of.openingBefore);
  settle(train);
  const load = edgeOf(train.parameters, 'load', 'cock');
  let steps = 0;
  return of.rows.map(({ atS }) => {
    for (; steps < Math.round(atS / stepS); steps++) {
      const share = Math.min(1, ((steps + 1) * stepS) / of.moveS);
      const opening = of.openingBefore + (of.openingAfter - of.openingBefore) * share;
      if (opening !== load.opening) {
        load.opening = opening;
        prepareGasTrain(train);
      }
      stepGasTrain(train, 0, AMBIENT_PA, stepS);
    }
    return pressureOf(train, 'outlet');
  });
}

function expectNear(found: readonly number[], of: Move, allowedPa: number): void {
  of.rows.forEach(({ atS, gaugePa }, i) => {
    const offPa = Math.abs((found[i] as number) - gaugePa);
    expect(offPa, `after ${atS} s`).toBeLessThan(allowedPa);
  });
}

function spanOf({ restPa, rows }: Move): number {
  const all = [restPa, ...rows.map(({ gaugePa }) => gaugePa)];
  return Math.max(...all) - Math.min(...all);
}

describe('a pressure regulator', () => {
  it.each(droop.rows)('rests at $gaugePa Pa with its load open by $opening', (row) => {
    // The supply of the simulator gives 7 Pa at full flow, which the stroke makes up for by 0.3.
    expect(Math.abs(settle(trainFor(droop, row.opening)) - row.gaugePa)).toBeLessThan(0.5);
  });

  it.each(moves.map((one) => [one.shows, one] as const))('%s, to a step of time', (_shows, of) => {
    const cornerPa = CORNER_STROKE * of.regulator.droopPa;
    expectNear(moveCock(of, 0.01), of, cornerPa + STEP_SHARE * spanOf(of));
  });

  it.each(
    moves
      .filter(({ shows }) => !AT_A_STOP.some((word) => shows.startsWith(word)))
      .map((one) => [one.shows, one] as const),
  )('%s, to a five-hundredth of the move where steps are short', (_shows, of) => {
    // What is first order in the step cancels between two steps of 1 and 2 ms.
    const long = moveCock(of, 0.002);
    const short = moveCock(of, 0.001).map((pa, i) => 2 * pa - (long[i] as number));
    expectNear(short, of, SHORT_STEP_SHARE * spanOf(of));
  });
});
