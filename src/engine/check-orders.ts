import type { FaultOrder } from './standing-faults.ts';

/**
 * A door: a time that is no number would stay due for ever.
 *
 * @throws RangeError that names the order and what to give it
 */
export function checkOrders(orders: readonly FaultOrder[]): void {
  orders.forEach(({ fault, onset }, place) => {
    const named = `faults[${place}] (${fault})`;
    if (onset.kind === 'time' && !isTime(onset.atS)) {
      throw new RangeError(`${named}: give its onset a time, s, from 0 on; found ${onset.atS}`);
    }
    if (onset.kind !== 'intermittent') return;
    const { fromS, periodS, duty } = onset;
    if (isTime(fromS) && periodS > 0 && Number.isFinite(periodS) && duty >= 0 && duty <= 1) return;
    throw new RangeError(
      `${named}: an intermittent onset wants fromS from 0 on, periodS above 0 and duty 0 to 1; ` +
        `found ${fromS}, ${periodS}, ${duty}`,
    );
  });
}

function isTime(seconds: number): boolean {
  return Number.isFinite(seconds) && seconds >= 0;
}
