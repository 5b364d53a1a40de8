import type { TimedAction } from './actions.ts';
import type { PlantFile, Profile } from './plant-file.ts';
import type { FaultOrder } from './standing-faults.ts';

export interface LoadPoint {
  readonly atS: number;
  /** Share of rated steam or heat taken from then on. */
  readonly load: number;
}

/** How the plant stands when the run begins: a hot vessel at rest, air in the furnace. */
export interface InitialCondition {
  readonly vesselGaugePa: number;
  /** Left out or null: boiling at that pressure, or a heating system at its rated temperature. */
  readonly waterTemperatureK?: number | null;
  readonly levelM: number;
  readonly load: number;
  /** Time of day, 0 to 24, for the plant's clocks; left out: eight in the morning. */
  readonly hour?: number;
}

/** Everything that makes a run, as plain data. */
export interface RunSetup {
  readonly plant: PlantFile;
  readonly profile: Profile;
  readonly initial: InitialCondition;
  readonly load: readonly LoadPoint[];
  readonly faults: readonly FaultOrder[];
  /** What the scenario does by itself and what a person did, by time. */
  readonly actions: readonly TimedAction[];
  readonly seed: number;
}
