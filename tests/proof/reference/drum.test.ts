import { describe, expect, it } from 'vitest';
import type { VesselState } from '../../../src/plant/vessel/index.ts';
import { drumBoiler, placeAt, runHeld } from '../../plant/vessel/boilers.ts';
import { readTable } from './table.ts';

interface Row {
  readonly atS: number;
  readonly pressurePa: number;
  readonly waterM3: number;
  readonly riserQuality: number;
  readonly bubbleM3: number;
}
interface Table {
  readonly drum: Parameters<typeof drumBoiler>[0];
  readonly feedJKg: number;
  readonly cases: readonly {
    readonly shows: string;
    readonly start: Row;
    readonly heatW: number;
    readonly steamKgS: number;
    readonly feedKgS: number;
    readonly rows: readonly Row[];
  }[];
}

const { drum, feedJKg, cases } = readTable<Table>('drum');
/** Steps of 0.1 s by rules of second order; the water's properties are fitted to 1e-6. */
const SAME_SHARE = 0.003;
/** Of the whole change where a quantity comes back to where it was. */
const OF_SWING = 0.002;

function drumAt(start: Row): VesselState {
  const state = drumBoiler({
    ...drum,
    bubbleSteamKgS: 0.2,
    heatLagS: 0,
    heatLossW: 0,
    accumulatorM3: 0,
    feedValveS: 0,
  });
  state.prepared.feedEnthalpyJKg = feedJKg;
  placeAt(state, start.pressurePa, start.waterM3, start.bubbleM3, start.riserQuality);
  return state;
}

function readingsOf(state: VesselState): Omit<Row, 'atS'> {
  return {
    pressurePa: state.gaugePa + state.ambient.pressurePa,
    waterM3: state.waterM3,
    riserQuality: state.riserQuality,
    bubbleM3: state.bubbleM3,
  };
}

describe('a drum', () => {
  it.each(cases.map((one) => [one.shows, one] as const))('%s', (_shows, one) => {
    const state = drumAt(one.start);
    let nowS = 0;
    for (const row of one.rows) {
      runHeld(state, row.atS - nowS, one.heatW, one.steamKgS, one.feedKgS);
      nowS = row.atS;
      const found = readingsOf(state);
      for (const name of Object.keys(found) as (keyof typeof found)[]) {
        const change = row[name] - one.start[name];
        const swing = Math.max(...one.rows.map((each) => Math.abs(each[name] - one.start[name])));
        const allowed = SAME_SHARE * Math.abs(change) + OF_SWING * swing;
        const off = Math.abs(found[name] - row[name]);
        expect(off, `${name} after ${row.atS} s, of ${change}`).toBeLessThan(allowed);
      }
    }
  });
});
