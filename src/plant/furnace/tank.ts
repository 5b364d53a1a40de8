/**
 * A well-stirred volume of fuel, air and burnt gas, as masses.
 *
 * Burnt gas is the products of just complete burning, so excess air stays air and the dry oxygen
 * is arithmetic. Unfinished is fuel whose atoms went through a flame without air of their own: they
 * are carbon monoxide and hydrogen, with oxygen taken from the burnt gas around.
 */
export interface TankState {
  volumeM3: number;
  fuelKg: number;
  airKg: number;
  productKg: number;
  unfinishedKg: number;
  /** What comes in during the step, and the amount there is room for at its end. */
  inFuelKg: number;
  inAirKg: number;
  inProductKg: number;
  inUnfinishedKg: number;
  capacityMol: number;
  /** Share of what comes in that leaves unmixed. */
  bypassShare: number;
  /** Amount in the tank after its last step. */
  amountMol: number;
  /** What left during the last step, the share that passed by unmixed included. */
  outFuelKg: number;
  outAirKg: number;
  outProductKg: number;
  outUnfinishedKg: number;
  outMol: number;
  /** Amount the tank lacked in its last step, because its gas shrank faster than gas came in. */
  lackMol: number;
}

/** Moles per kilogram of the three species. */
export interface SpeciesAmounts {
  fuelMolKg: number;
  airMolKg: number;
  productMolKg: number;
}

/** A mass below this is none; it keeps the decay of traces out of denormal numbers. */
const TRACE_KG = 1e-14;

export function createTank(): TankState {
  return {
    volumeM3: 1,
    fuelKg: 0,
    airKg: 0,
    productKg: 0,
    unfinishedKg: 0,
    inFuelKg: 0,
    inAirKg: 0,
    inProductKg: 0,
    inUnfinishedKg: 0,
    capacityMol: 0,
    bypassShare: 0,
    amountMol: 0,
    outFuelKg: 0,
    outAirKg: 0,
    outProductKg: 0,
    outUnfinishedKg: 0,
    outMol: 0,
    lackMol: 0,
  };
}

export function tankAmount(tank: TankState, amounts: SpeciesAmounts): number {
  return (
    (tank.fuelKg + tank.unfinishedKg) * amounts.fuelMolKg +
    tank.airKg * amounts.airMolKg +
    tank.productKg * amounts.productMolKg
  );
}

export function tankMass(tank: TankState): number {
  return tank.fuelKg + tank.airKg + tank.productKg + tank.unfinishedKg;
}

/**
 * One step of mixing at constant pressure: gas comes in, and as much leaves as the tank's own
 * temperature gives no room for.
 *
 * Equation: m₁ (1 + a/2) = m₀ (1 − a/2) + (1 − β) m_in for each species (trapezoidal rule of
 *   dm/dt = ṁ_in − k·m), with a such that Σ m₁/M is the capacity p·V / (R·T). Mass is conserved
 *   to rounding; the decay over N air changes is exp(−N) to a²/12 · N.
 * Valid for: a < 2, that is less than two tank volumes in a step.
 * Left out: layering; the share β that finds the way out unmixed stands for short circuits.
 * Source: continuous stirred tank, any text on reactor engineering.
 */
export function stepTank(tank: TankState, amounts: SpeciesAmounts): void {
  const { inFuelKg: fuelInKg, inAirKg: airInKg, inProductKg: productInKg, capacityMol } = tank;
  const unfinishedInKg = tank.inUnfinishedKg;
  const mixed = airInKg > 0 ? 1 - tank.bypassShare : 1;
  const fuelMixed = mixed * fuelInKg;
  const airMixed = mixed * airInKg;
  const productMixed = mixed * productInKg;
  const unfinishedMixed = mixed * unfinishedInKg;
  const inMol =
    (fuelMixed + unfinishedMixed) * amounts.fuelMolKg +
    airMixed * amounts.airMolKg +
    productMixed * amounts.productMolKg;
  const before = tankAmount(tank, amounts);
  const surplus = before + inMol - capacityMol;
  if (surplus <= 0) {
    tank.fuelKg += fuelMixed;
    tank.airKg += airMixed;
    tank.productKg += productMixed;
    tank.unfinishedKg += unfinishedMixed;
    tank.outFuelKg = fuelInKg - fuelMixed;
    tank.outAirKg = airInKg - airMixed;
    tank.outProductKg = productInKg - productMixed;
    tank.outUnfinishedKg = unfinishedInKg - unfinishedMixed;
    tank.amountMol = before + inMol;
    tank.lackMol = -surplus;
  } else {
    const both = before + capacityMol;
    const divide = 1 / (both + surplus);
    const keep = (both - surplus) * divide;
    const share = both * divide;
    const fuel = tank.fuelKg * keep + share * fuelMixed;
    const air = tank.airKg * keep + share * airMixed;
    const product = tank.productKg * keep + share * productMixed;
    const unfinished = tank.unfinishedKg * keep + share * unfinishedMixed;
    tank.outFuelKg = tank.fuelKg + fuelInKg - fuel;
    tank.outAirKg = tank.airKg + airInKg - air;
    tank.outProductKg = tank.productKg + productInKg - product;
    tank.outUnfinishedKg = tank.unfinishedKg + unfinishedInKg - unfinished;
    tank.fuelKg = fuel;
    tank.airKg = air;
    tank.productKg = product;
    tank.unfinishedKg = unfinished;
    tank.amountMol = capacityMol;
    tank.lackMol = 0;
  }
  tank.outMol =
    (tank.outFuelKg + tank.outUnfinishedKg) * amounts.fuelMolKg +
    tank.outAirKg * amounts.airMolKg +
    tank.outProductKg * amounts.productMolKg;
  if (tank.fuelKg < TRACE_KG) tank.fuelKg = 0;
  if (tank.productKg < TRACE_KG) tank.productKg = 0;
  if (tank.unfinishedKg < TRACE_KG) tank.unfinishedKg = 0;
}

/** Moves a share of what is in one tank into another, as when the other's gas shrinks. */
export function drawBack(from: TankState, to: TankState, share: number): void {
  const fuel = from.fuelKg * share;
  const air = from.airKg * share;
  const product = from.productKg * share;
  const unfinished = from.unfinishedKg * share;
  from.fuelKg -= fuel;
  from.airKg -= air;
  from.productKg -= product;
  from.unfinishedKg -= unfinished;
  to.fuelKg += fuel;
  to.airKg += air;
  to.productKg += product;
  to.unfinishedKg += unfinished;
}

/** Takes a share of the tank's content out. */
export function spill(tank: TankState, share: number): void {
  const keep = 1 - share;
  tank.fuelKg *= keep;
  tank.airKg *= keep;
  tank.productKg *= keep;
  tank.unfinishedKg *= keep;
}

/** Burns fuelKg of the tank's fuel with its own air. */
export function burnInTank(tank: TankState, fuelKg: number, airPerFuelKgKg: number): void {
  tank.fuelKg -= fuelKg;
  tank.airKg -= fuelKg * airPerFuelKgKg;
  tank.productKg += fuelKg * (1 + airPerFuelKgKg);
}
