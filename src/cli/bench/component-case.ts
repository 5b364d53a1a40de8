/** Drum, interspace and purge of one case, stepped by the components that the plant is made of. */
import type { RunSetup } from '../../engine/index.ts';
import type { TankState } from '../../plant/furnace/index.ts';
import type { GasTrain } from '../../plant/gas/index.ts';
import type { VesselState } from '../../plant/vessel/index.ts';
import type { Components } from './components.ts';

const STEP_S = 0.01;
const VESSEL_STEPS = 10;
export const TIMES_S = Array.from({ length: 30 }, (_, i) => 2 * (i + 1));
const SETTLING_S = 1200;
export const HELD = { heatW: 3.3e6, steamKgS: 1.6 };
export const INTERSPACE = {
  volumeDm3: 12,
  supplyPa: 10_000,
  startPa: 10_000,
  upstreamLeakDm3H: 100,
  downstreamLeakDm3H: 400,
};
export const PURGE = {
  furnaceM3: 20,
  passesM3: 8,
  bypassShare: 0.05,
  airM3S: 2,
  startShare: 0.095,
};
const ATMOSPHERE_PA = 101_325;
const METHANE_KG_MOL = 16.04246e-3;

interface System {
  readonly vessel: VesselState;
  readonly train: GasTrain;
  readonly furnace: TankState;
  readonly passes: TankState;
}

export function prepareCase(c: Components, of: RunSetup) {
  const { gasTrain, vessel: fitted } = of.plant;
  const upstream = gasTrain.edges.find(({ id }) => id === 'upstream-valve');
  const downstream = gasTrain.edges.find(({ id }) => id === 'downstream-valve');
  if (fitted.kind !== 'water-tube') return null;
  if (upstream?.kind !== 'shutoff' || downstream?.kind !== 'shutoff') return null;
  const { upstreamLeakDm3H, downstreamLeakDm3H, volumeDm3, supplyPa, startPa } = INTERSPACE;
  const drum = { ...fitted, accumulatorM3: 0, heatLagS: 0, heatLossW: 0, feedValveS: 0 };
  const parameters = {
    ...gasTrain,
    mixture: methaneAlone(gasTrain.mixture),
    temperatureK: 288.15,
    supply: { ...gasTrain.supply, pressureGaugePa: supplyPa, ratedDropPa: 10, volumeDm3: 1000 },
    nodes: [{ id: 'interspace', volumeDm3, startGaugePa: startPa, escapeDm3H: 0 }],
    edges: [
      { ...upstream, from: 'supply', to: 'interspace', seatLeakDm3H: upstreamLeakDm3H },
      { ...downstream, from: 'interspace', to: 'atmosphere', seatLeakDm3H: downstreamLeakDm3H },
    ],
  };
  const ambient = c.createAmbient({ altitudeM: 0, temperatureC: 20 });
  const molPerM3 = ambient.pressurePa / (8.314462618 * ambient.temperatureK);
  const amounts = {
    fuelMolKg: 1 / METHANE_KG_MOL,
    airMolKg: 1 / c.AIR_MOLAR_MASS,
    productMolKg: 36,
  };
  const feed = { heatW: HELD.heatW, load: 0, feedDemand: 0, pumpFed: false };

  /** Fires the drum until bubbles and circulation have settled. */
  function fired(): VesselState {
    const vessel = c.createVessel(drum, ambient);
    c.settleVessel(vessel, { gaugePa: 9e5, levelM: 0.3, waterTemperatureK: null });
    for (let i = 0; i < SETTLING_S; i++) {
      holdSteam(vessel);
      c.stepVessel(vessel, feed, 0.1);
    }
    return vessel;
  }

  function holdSteam(vessel: VesselState): void {
    const root = Math.sqrt(vessel.gaugePa * vessel.saturation.steamDensity);
    feed.load = HELD.steamKgS / (vessel.prepared.loadFactor * root);
  }

  function filled(volumeM3: number): TankState {
    const tank = c.createTank();
    tank.capacityMol = volumeM3 * molPerM3;
    tank.bypassShare = PURGE.bypassShare;
    tank.fuelKg = (tank.capacityMol * PURGE.startShare) / amounts.fuelMolKg;
    tank.airKg = (tank.capacityMol * (1 - PURGE.startShare)) / amounts.airMolKg;
    return tank;
  }

  function create(): System {
    return {
      vessel: fired(),
      train: c.createGasTrain(parameters, ATMOSPHERE_PA),
      furnace: filled(PURGE.furnaceM3),
      passes: filled(PURGE.passesM3),
    };
  }

  function step(s: System, k: number): void {
    const { furnace, passes } = s;
    c.stepGasTrain(s.train, 0, ATMOSPHERE_PA, STEP_S);
    furnace.inAirKg = (STEP_S * PURGE.airM3S * molPerM3) / amounts.airMolKg;
    c.stepTank(furnace, amounts);
    passes.inFuelKg = furnace.outFuelKg;
    passes.inAirKg = furnace.outAirKg;
    c.stepTank(passes, amounts);
    if (k % VESSEL_STEPS !== VESSEL_STEPS - 1) return;
    holdSteam(s.vessel);
    c.stepVessel(s.vessel, feed, STEP_S * VESSEL_STEPS);
  }

  function share(tank: TankState): number {
    return (tank.fuelKg * amounts.fuelMolKg) / tank.capacityMol;
  }

  function read({ vessel, train, furnace, passes }: System): number[] {
    return [
      vessel.gaugePa + ambient.pressurePa,
      vessel.waterM3,
      vessel.riserQuality,
      vessel.bubbleM3,
      train.pressureGaugePa[train.nodeIds.indexOf('interspace')] as number,
      share(furnace),
      share(passes),
    ];
  }

  function run(system: System): number[][] {
    let k = 0;
    return TIMES_S.map((untilS) => {
      for (; k < Math.round(untilS / STEP_S); k++) step(system, k);
      return read(system);
    });
  }
  return { drum, start: read(create()), create, run, solve: () => run(create()) };
}

function methaneAlone<T extends Readonly<Record<string, number>>>(mixture: T): T {
  return Object.fromEntries(
    Object.keys(mixture).map((name) => [name, name === 'methane' ? 1 : 0]),
  ) as unknown as T;
}
