/** Running totals since the furnace was made; heat counts over that of gas at 25 °C. */
export interface HeatTotals {
  /** Through the burner head (backwards counts negative), and all gas. */
  airKg: number;
  gasKg: number;
  /** Fuel that left for the stack unburnt, and as carbon monoxide with hydrogen. */
  fuelOutKg: number;
  unfinishedOutKg: number;
  /** Released by burning, and brought in by air and gas. */
  releasedJ: number;
  intakeJ: number;
  waterJ: number;
  casingJ: number;
  stackJ: number;
  /** Pushed back out through the burner head. */
  spiltJ: number;
  spiltKg: number;
  /** Stored when the furnace was last filled. */
  startJ: number;
  /** What passed since the last slow step and waits to be booked there: to walls and passes, to tiles. */
  spanWaterJ: number;
  spanTileJ: number;
  spanFurnaceOutKg: number;
  /** What came in and what left, as far as it is booked. */
  bookedInKg: number;
  bookedLeftKg: number;
}

export function createHeatTotals(): HeatTotals {
  return {
    airKg: 0,
    gasKg: 0,
    fuelOutKg: 0,
    unfinishedOutKg: 0,
    releasedJ: 0,
    intakeJ: 0,
    waterJ: 0,
    casingJ: 0,
    stackJ: 0,
    spiltJ: 0,
    spiltKg: 0,
    startJ: 0,
    spanWaterJ: 0,
    spanTileJ: 0,
    spanFurnaceOutKg: 0,
    bookedInKg: 0,
    bookedLeftKg: 0,
  };
}
