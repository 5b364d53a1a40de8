import { burnAdiabatic, type Equilibrium, equilibrateAt } from './equilibrium.ts';
import {
  AIR_OXYGEN,
  airHeat,
  atomsOf,
  type BurnableGas,
  formationHeat,
  oxygenDemand,
} from './fuel-atoms.ts';
import { growNitricOxide } from './nitric-oxide.ts';
import { SPECIES } from './species-data.ts';

/** What one pocket of fuel and air makes, by its equivalence ratio. */
export interface LocalFlame {
  adiabaticK: number;
  /** Share of its fuel, by oxygen demand, that stays carbon monoxide and hydrogen. */
  unfinished: number;
  /** Of these two, the share that is carbon monoxide. */
  monoxideShare: number;
  /** mol per mol of air. */
  nitricOxide: number;
}

/** With the equilibria it was read from, from which the next pocket can be started. */
export interface BurntPocket {
  readonly flame: LocalFlame;
  readonly hot: Equilibrium;
  readonly cooled: Equilibrium;
}

export interface FlameZone {
  readonly intakeK: number;
  readonly pressurePa: number;
  /** Share of the flame's temperature rise that it has radiated where NO forms. */
  readonly heatLossShare: number;
  /** Time that gas spends there. */
  readonly timeS: number;
}

/** Below this CO is no longer oxidised in the time there is. */
const FREEZE_K = 1600;
/** Leaner pockets than this burn poorly; than that, not at all. */
const POOR_BELOW = 0.45;
const NONE_BELOW = 0.3;
/** Of the fuel of a pocket too lean to burn, what is left half-oxidised; the hot furnace burns the rest. */
const QUENCHED_SHARE = 0.1;
/** An element as scarce as this share of the others is left out: it changes nothing. */
const LEANEST = 1e-3;

const at = (name: string) => SPECIES.findIndex((species) => species.name === name);
const H2 = at('H2');
const CO = at('CO');
const CH4 = at('CH4');
const O = at('O');
const O2 = at('O2');
const OH = at('OH');
const N2 = at('N2');
const NO = at('NO');

/**
 * A pocket of mixture that burns by itself.
 *
 * Equation: adiabatic equilibrium gives its temperature; its CO and H₂ are those of equilibrium at
 *   1600 K, where oxidation freezes; a pocket leaner than 0.45 quenches by degrees; NO grows at the
 *   adiabatic temperature less what has been radiated.
 * Valid for: equivalence ratios to 2, where soot begins.
 * Left out: mixing of pockets with one another while they burn.
 * Source: freezing temperature: CO of the order of 10 ppm in well-mixed lean burners; the quenching
 *   of lean pockets is an allowance chosen here.
 */
export function burnPocket(
  fuel: BurnableGas,
  equivalence: number,
  zone: FlameZone,
  near?: BurntPocket,
): BurntPocket {
  const phi = Math.max(equivalence, LEANEST);
  const demand = oxygenDemand(fuel);
  const airMol = demand / AIR_OXYGEN;
  const atoms = atomsOf(fuel, phi, airMol);
  const heat = phi * formationHeat(fuel) + airMol * airHeat(zone.intakeK);
  const hot = burnAdiabatic(atoms, heat, zone.pressurePa, near?.hot);
  const cooled = equilibrateAt(atoms, FREEZE_K, zone.pressurePa, near?.cooled);
  const reduced = mol(cooled, CO) + mol(cooled, H2) + 4 * mol(cooled, CH4);
  const monoxideShare = mol(cooled, CO) / (mol(cooled, CO) + mol(cooled, H2));
  const poor = (POOR_BELOW - phi) / (POOR_BELOW - NONE_BELOW);
  const quenched = poor <= 0 ? 0 : poor >= 1 ? 1 : poor * poor * (3 - 2 * poor);
  const unfinished = Math.min(1, reduced / (2 * demand * phi) + QUENCHED_SHARE * quenched);

  const zoneK = hot.temperatureK - zone.heatLossShare * (hot.temperatureK - zone.intakeK);
  let nitricOxide = 0;
  if (zoneK > 1200) {
    const gas = equilibrateAt(atoms, zoneK, zone.pressurePa, hot);
    const perMol = 1 / gas.totalMol;
    const share = growNitricOxide(
      {
        temperatureK: zoneK,
        pressurePa: zone.pressurePa,
        oxygenAtom: mol(gas, O) * perMol,
        oxygen: mol(gas, O2) * perMol,
        nitrogen: mol(gas, N2) * perMol,
        hydroxyl: mol(gas, OH) * perMol,
        nitricOxide: mol(gas, NO) * perMol,
      },
      zone.timeS,
    );
    nitricOxide = (share * gas.totalMol) / airMol;
  }
  return {
    flame: { adiabaticK: hot.temperatureK, unfinished, monoxideShare, nitricOxide },
    hot,
    cooled,
  };
}

function mol(gas: Equilibrium, species: number): number {
  return gas.mol[species] as number;
}
