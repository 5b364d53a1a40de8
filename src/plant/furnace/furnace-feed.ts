/** What enters the furnace and what could light it, written by the engine each step. */
export interface FurnaceFeed {
  /** Through the burner head, negative when pushed back. */
  airKgS: number;
  /** All fuel that enters, burnt or not. */
  gasKgS: number;
  /** The part of it that burns in a flame. */
  burntKgS: number;
  /** Strength of what could light a mixture in the furnace, 0 to 1. */
  igniter: number;
  /** Of the boiling water behind the walls. */
  waterTemperatureK: number;
  /** Pressure drop over the burner head, and how far its diffuser has slipped: they decide the mixing. */
  headDifferentialPa: number;
  diffuserShift: number;
}
