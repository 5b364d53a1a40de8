import { exactExp, exactLog } from '../../numeric/index.ts';
import { solveLinear } from './solve-linear.ts';
import { type Atoms, BURNT_SPECIES, SPECIES, type SpeciesData } from './species-data.ts';
import { createShares, fillShares, MOLAR_GAS_CONSTANT, STANDARD_PA } from './thermodynamics.ts';

export interface Equilibrium {
  readonly temperatureK: number;
  /** Amount of each burnt species, in the order of SPECIES, for the atoms that were given. */
  readonly mol: Float64Array;
  readonly totalMol: number;
  /** With that of formation, J. */
  readonly enthalpyJ: number;
}

const ELEMENTS = 5;
const FIRST_GUESS_K = 2200;
const MOST_STEPS = 80;
/** A last Newton step below this leaves an error of its square. */
const CONVERGED = 1e-7;
/** ln of a mole fraction below which a species is a trace, and where a growing trace may get to. */
const TRACE = -18.420681;
const RISEN_TRACE = -9.2103404;

/** Equilibrium of the given amounts of atoms (mol) at a temperature. */
export function equilibrateAt(
  atoms: Atoms,
  temperatureK: number,
  pressurePa: number,
  from?: Equilibrium,
): Equilibrium {
  return minimise(atoms, pressurePa, temperatureK, null, from);
}

/** Equilibrium at constant pressure of what holds so much enthalpy, formation included. */
export function burnAdiabatic(
  atoms: Atoms,
  enthalpyJ: number,
  pressurePa: number,
  from?: Equilibrium,
): Equilibrium {
  return minimise(atoms, pressurePa, from?.temperatureK ?? FIRST_GUESS_K, enthalpyJ, from);
}

/**
 * Least Gibbs energy of a gas at constant pressure, at a temperature or an enthalpy.
 *
 * Equation: μⱼ/RT = Σᵢ aᵢⱼ πᵢ for every species, Σⱼ aᵢⱼ nⱼ = bᵢ, Σ nⱼ = n, and Σ nⱼ hⱼ = H. Newton on
 *   ln nⱼ, ln n and ln T with the element potentials πᵢ as unknowns; steps limited so that no
 *   large species changes by more than e² and no trace jumps above 1e-4.
 * Valid for: 200 to 3500 K, gases only; any of the five elements may be absent.
 * Source: S. Gordon and B. J. McBride, NASA RP-1311 (1994), the method; written anew.
 */
function minimise(
  atoms: Atoms,
  pressurePa: number,
  startK: number,
  enthalpyJ: number | null,
  from: Equilibrium | undefined,
): Equilibrium {
  const present: number[] = [];
  let scale = 0;
  for (let i = 0; i < ELEMENTS; i++) {
    if ((atoms[i] as number) > 0) present.push(i);
    scale += atoms[i] as number;
  }
  const active: number[] = [];
  for (let j = 0; j < BURNT_SPECIES; j++) if (isPossible(j, atoms)) active.push(j);
  const count = present.length;
  /** Atoms of each species, of the elements that are present only. */
  const has = new Float64Array(BURNT_SPECIES * ELEMENTS);
  for (const j of active) {
    const all = (SPECIES[j] as SpeciesData).atoms;
    for (let row = 0; row < count; row++) {
      has[j * ELEMENTS + row] = all[present[row] as number] as number;
    }
  }
  const size = count + (enthalpyJ === null ? 1 : 2);
  const matrix = new Float64Array(size * size);
  const right = new Float64Array(size);
  const logMol = new Float64Array(BURNT_SPECIES);
  const change = new Float64Array(BURNT_SPECIES);
  const mol = new Float64Array(BURNT_SPECIES);
  const shares = createShares();
  const logPressure = exactLog(pressurePa / STANDARD_PA);
  let temperatureK = startK;
  let logTotal = exactLog(0.4 * scale);
  const guess = logTotal - exactLog(active.length);
  for (const j of active) {
    const old = from?.mol[j] ?? 0;
    logMol[j] = old > 0 ? exactLog(old) : guess;
  }
  if (from !== undefined) logTotal = exactLog(from.totalMol);
  fillShares(shares, temperatureK);

  for (let step = 0; step < MOST_STEPS; step++) {
    matrix.fill(0);
    right.fill(0);
    let sum = 0;
    const total = exactExp(logTotal);
    for (const j of active) {
      const n = exactExp(logMol[j] as number);
      mol[j] = n;
      sum += n;
      const heat = shares.enthalpy[j] as number;
      const potential =
        heat - (shares.entropy[j] as number) + (logMol[j] as number) - logTotal + logPressure;
      for (let row = 0; row < count; row++) {
        const a = has[j * ELEMENTS + row] as number;
        if (a === 0) continue;
        const an = a * n;
        for (let column = 0; column < count; column++) {
          add(matrix, row * size + column, an * (has[j * ELEMENTS + column] as number));
        }
        add(matrix, row * size + count, an);
        add(matrix, count * size + row, an);
        add(right, row, an * (potential - 1));
        if (enthalpyJ !== null) {
          add(matrix, row * size + count + 1, an * heat);
          add(matrix, (count + 1) * size + row, an * heat);
        }
      }
      add(right, count, n * (potential - 1));
      if (enthalpyJ !== null) {
        add(matrix, count * size + count + 1, n * heat);
        add(matrix, (count + 1) * size + count, n * heat);
        add(
          matrix,
          (count + 1) * size + count + 1,
          n * ((shares.capacity[j] as number) + heat * heat),
        );
        add(right, count + 1, n * heat * (potential - 1));
      }
    }
    for (let row = 0; row < count; row++) add(right, row, atoms[present[row] as number] as number);
    add(matrix, count * size + count, sum - total);
    add(right, count, total);
    if (enthalpyJ !== null) {
      add(right, count + 1, enthalpyJ / (MOLAR_GAS_CONSTANT * temperatureK));
    }
    solveLinear(matrix, right, size);

    const totalChange = right[count] as number;
    const warming = enthalpyJ === null ? 0 : (right[count + 1] as number);
    let limit = Math.max(5 * Math.abs(totalChange), 5 * Math.abs(warming));
    let traceStep = 1;
    let largest = Math.max(Math.abs(totalChange), Math.abs(warming));
    for (const j of active) {
      const heat = shares.enthalpy[j] as number;
      const potential =
        heat - (shares.entropy[j] as number) + (logMol[j] as number) - logTotal + logPressure;
      let d = totalChange + heat * warming - potential;
      for (let row = 0; row < count; row++) {
        d += (has[j * ELEMENTS + row] as number) * (right[row] as number);
      }
      change[j] = d;
      const logShare = (logMol[j] as number) - logTotal;
      if (logShare > TRACE) {
        if (d > limit) limit = d;
        else if (-d > limit && logShare > RISEN_TRACE) limit = -d;
        largest = Math.max(largest, (mol[j] as number) * (1 / total) * Math.abs(d));
      } else if (d > totalChange) {
        traceStep = Math.min(traceStep, Math.abs((RISEN_TRACE - logShare) / (d - totalChange)));
      }
    }
    const share = Math.min(1, limit > 2 ? 2 / limit : 1, traceStep);
    for (const j of active) add(logMol, j, share * (change[j] as number));
    logTotal += share * totalChange;
    if (warming !== 0) {
      temperatureK *= exactExp(share * warming);
      fillShares(shares, temperatureK);
    }
    if (share === 1 && largest < CONVERGED) break;
    if (step === MOST_STEPS - 1) throw new RangeError('equilibrium did not converge');
  }
  let heat = 0;
  let totalMol = 0;
  for (const j of active) {
    mol[j] = exactExp(logMol[j] as number);
    totalMol += mol[j] as number;
    heat += (mol[j] as number) * (shares.enthalpy[j] as number);
  }
  return { temperatureK, mol, totalMol, enthalpyJ: heat * MOLAR_GAS_CONSTANT * temperatureK };
}

/** Whether all that a species is made of is there. */
function isPossible(species: number, atoms: Atoms): boolean {
  const { atoms: needs } = SPECIES[species] as SpeciesData;
  return needs.every((count, i) => count === 0 || (atoms[i] as number) > 0);
}

function add(array: Float64Array, at: number, value: number): void {
  array[at] = (array[at] as number) + value;
}
