import type { BurnableGas } from './fuel-atoms.ts';
import { buildGasHeatTable, type GasHeatTable } from './gas-heat-table.ts';
import type { FlameZone } from './local-flame.ts';
import { buildMixingTable, type MixingTable } from './mixing-table.ts';
import { buildStackHeat, type StackHeatTable } from './stack-heat.ts';

/** All that combustion of one fuel in one weather needs at run time. */
export interface CombustionTables {
  readonly gasHeat: GasHeatTable;
  readonly mixing: MixingTable;
  readonly stackHeat: StackHeatTable;
}

/** Runs of one plant share their tables; a fault that changes gas or weather adds a few more. */
const KEPT = 8;
const kept = new Map<string, CombustionTables>();

/** Built when first asked for, then found again by the values they depend on. */
export function combustionTables(
  fuel: BurnableGas,
  zone: FlameZone,
  airMolarMassKgMol: number,
): CombustionTables {
  const key = [
    fuel.carbonMol,
    fuel.hydrogenMol,
    fuel.oxygenMol,
    fuel.nitrogenMol,
    fuel.molarMassKgMol,
    fuel.lowerHeatingJKg,
    zone.intakeK,
    zone.pressurePa,
    zone.heatLossShare,
    zone.timeS,
    airMolarMassKgMol,
  ].join();
  const found = kept.get(key);
  if (found !== undefined) return found;
  const built: CombustionTables = {
    gasHeat: buildGasHeatTable(fuel, airMolarMassKgMol, zone.pressurePa),
    mixing: buildMixingTable(fuel, zone),
    stackHeat: buildStackHeat(fuel),
  };
  if (kept.size >= KEPT) kept.delete(kept.keys().next().value as string);
  kept.set(key, built);
  return built;
}
