import { exactExp, exactPow } from '../../numeric/index.ts';

const STEFAN_BOLTZMANN = 5.670374419e-8;
const PASS_TABLE_PER_SHARE = 32;
const PASS_TABLE_LAST = 48;
const LEAST_FLOW_SHARE = 0.01;
/** Heat transfer of turbulent gas in tubes goes with flow^0.65 to 0.8, so NTU with flow^−0.35. */
const NTU_FLOW_EXPONENT = -0.35;

/**
 * Heat by radiation between gas and wall as a conductance, W/K.
 *
 * Equation: σ·A_eff·(T_g⁴ − T_w⁴) = h·(T_g − T_w), h = σ·A_eff·(T_g² + T_w²)(T_g + T_w).
 * Left out: emissivity that changes with load and sooting; A_eff is area times exchange factor.
 * Source: well-stirred furnace; H. C. Hottel and A. F. Sarofim, Radiative Transfer.
 */
export function radiantConductance(areaM2: number, gasK: number, wallK: number): number {
  return STEFAN_BOLTZMANN * areaM2 * (gasK * gasK + wallK * wallK) * (gasK + wallK);
}

/**
 * Share of the temperature difference to the boiling water that survives the passes, by flow over
 * rated flow.
 *
 * Equation: 1 − ε = exp(−NTU), NTU = NTU_rated (1 − fouling) (ṁ/ṁ_rated)^−0.35.
 * Valid for: one side at constant temperature.
 * Source: effectiveness-NTU method, any text on heat exchangers.
 */
export function passTable(ratedNtu: number, fouling: number): Float64Array {
  const table = new Float64Array(PASS_TABLE_LAST + 1);
  for (let i = 0; i <= PASS_TABLE_LAST; i++) {
    const share = Math.max(LEAST_FLOW_SHARE, i / PASS_TABLE_PER_SHARE);
    table[i] = exactExp(-ratedNtu * (1 - fouling) * exactPow(share, NTU_FLOW_EXPONENT));
  }
  return table;
}

export function readPassTable(table: Float64Array, flowShare: number): number {
  const place = flowShare * PASS_TABLE_PER_SHARE;
  if (!(place > 0)) return table[0] as number;
  if (place >= PASS_TABLE_LAST) return table[PASS_TABLE_LAST] as number;
  const row = Math.floor(place);
  const low = table[row] as number;
  return low + ((table[row + 1] as number) - low) * (place - row);
}
