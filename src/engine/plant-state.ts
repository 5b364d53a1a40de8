/**
 * The plant of a run: the physics of each component, put together and stepped in one order.
 *
 * Order of a step: gas train (against the furnace pressure of the step before), air path,
 * flame (on the flows just found), furnace, vessel. The one-step-old couplings (furnace
 * pressure to gas, gas temperatures and expansion to air) change by far less than one step
 * resolves; halving the step is the proof.
 */
import type { FaultSubject } from '../faults/index.ts';
import type { FieldOutputs } from '../field/index.ts';
import { createRandom } from '../numeric/index.ts';
import {
  AIR_MOLAR_MASS,
  type AirPathState,
  type AirSurroundings,
  type AmbientState,
  createAirPath,
  createAmbient,
  prepareAirPath,
  prepareAmbient,
  stepAirPath,
} from '../plant/air/index.ts';
import {
  createFlame,
  type FlameFeed,
  type FlameState,
  NO_GAS_KGS,
  prepareFlame,
  stepFlame,
} from '../plant/flame/index.ts';
import {
  createFurnace,
  describeFuel,
  type FuelProperties,
  type FurnaceFeed,
  type FurnaceState,
  prepareFurnace,
  putBy,
  stepAnalyser,
  stepFurnace,
} from '../plant/furnace/index.ts';
import {
  airShareOf,
  createGasTrain,
  describeMixture,
  energise,
  type GasTrain,
  prepareGasTrain,
  setBlade,
  stepGasTrain,
} from '../plant/gas/index.ts';
import {
  createVessel,
  prepareVessel,
  settleVessel,
  stepVessel,
  type VesselFeed,
  type VesselState,
} from '../plant/vessel/index.ts';

export interface PlantState {
  readonly parameters: FaultSubject;
  readonly ambient: AmbientState;
  readonly gas: GasTrain;
  readonly air: AirPathState;
  readonly furnace: FurnaceState;
  readonly flame: FlameState;
  readonly vessel: VesselState;
  readonly vesselFeed: VesselFeed;
  readonly fuel: FuelProperties;
  readonly places: GasPlaces;
  readonly airAround: AirSurroundings;
  readonly flameFeed: FlameFeed;
  readonly furnaceFeed: FurnaceFeed;
  /** Share of rated steam or heat taken. */
  load: number;
  /** Of all heat the furnace gave to water, what the vessel has had; it moves every tenth step. */
  heatToDrumJ: number;
  drumS: number;
  drumSteps: number;
  upstreamOn: boolean;
  downstreamOn: boolean;
  ventOn: boolean;
  pilotOn: boolean;
}

/** Where the engine reads and drives the gas train; −1 where the plant has no such place. */
export interface GasPlaces {
  readonly regulated: number;
  readonly interspace: number;
  readonly manifold: number;
  readonly upstream: number;
  readonly downstream: number;
  readonly vent: number;
  readonly pilot: number;
  readonly control: number;
  /** Edges that end in the furnace: the pilot's own, and all others. */
  readonly pilotNozzle: number;
  readonly mainNozzles: readonly number[];
}

export interface StartCondition {
  readonly vesselGaugePa: number;
  /** Colder than boiling, or of a heating system; left out or null as `settleVessel` says. */
  readonly waterTemperatureK?: number | null;
  readonly levelM: number;
  readonly load: number;
}

/** @param parameters kept, not copied: a fault changes them in place, then calls `preparePlant` */
export function createPlant(
  parameters: FaultSubject,
  start: StartCondition,
  seed: number,
): PlantState {
  const ambient = createAmbient(parameters.ambient);
  const fuel = describeFuel(describeMixture(parameters.gasTrain.mixture));
  const gas = createGasTrain(parameters.gasTrain, ambient.pressurePa);
  const vessel = createVessel(parameters.vessel, ambient);
  settleVessel(vessel, {
    gaugePa: start.vesselGaugePa,
    levelM: start.levelM,
    waterTemperatureK: start.waterTemperatureK ?? null,
  });
  return {
    parameters,
    ambient,
    gas,
    air: createAirPath(parameters.airPath, ambient),
    furnace: createFurnace(parameters.furnace, fuel, ambient),
    flame: createFlame(
      parameters.ignition,
      parameters.flame,
      fuel,
      ambient,
      createRandom(seed, 'plant.flame'),
    ),
    vessel,
    vesselFeed: { heatW: 0, load: 0, feedDemand: 0, pumpFed: false },
    fuel,
    places: findPlaces(gas, parameters),
    airAround: {
      shaftSpeedRpm: 0,
      bladeDeg: 0,
      fuelKgS: 0,
      furnaceTemperatureK: 0,
      flueTemperatureK: 0,
      productShare: 0,
      pulsePa: 0,
    },
    flameFeed: {
      sparkW: 0,
      pilotGasKgS: 0,
      mainGasKgS: 0,
      airKgS: 0,
      furnaceAirKg: 0,
      refractoryTemperatureK: 0,
      wallIgnitionK: 0,
      flash: 0,
    },
    furnaceFeed: {
      airKgS: 0,
      gasKgS: 0,
      burntKgS: 0,
      igniter: 0,
      waterTemperatureK: 0,
      headDifferentialPa: 0,
      diffuserShift: 0,
    },
    load: start.load,
    heatToDrumJ: 0,
    drumS: 0,
    drumSteps: 0,
    upstreamOn: false,
    downstreamOn: false,
    ventOn: false,
    pilotOn: false,
  };
}

/** Derived constants of every component, after a change of a parameter; state untouched. */
export function preparePlant(plant: PlantState): void {
  prepareAmbient(plant.ambient);
  Object.assign(plant.fuel, describeFuel(describeMixture(plant.parameters.gasTrain.mixture)));
  prepareGasTrain(plant.gas);
  prepareAirPath(plant.air);
  prepareFurnace(plant.furnace);
  prepareFlame(plant.flame);
  prepareVessel(plant.vessel);
}

export function stepPlant(plant: PlantState, driven: FieldOutputs, stepS: number): void {
  const { gas, air, furnace, flame, vessel, places } = plant;
  if (driven.upstreamValve !== plant.upstreamOn) {
    plant.upstreamOn = driven.upstreamValve;
    if (places.upstream >= 0) energise(gas, places.upstream, driven.upstreamValve);
  }
  if (driven.downstreamValve !== plant.downstreamOn) {
    plant.downstreamOn = driven.downstreamValve;
    if (places.downstream >= 0) energise(gas, places.downstream, driven.downstreamValve);
  }
  if (driven.ventValve !== plant.ventOn) {
    plant.ventOn = driven.ventValve;
    if (places.vent >= 0) energise(gas, places.vent, driven.ventValve);
  }
  if (driven.pilotValve !== plant.pilotOn) {
    plant.pilotOn = driven.pilotValve;
    if (places.pilot >= 0) energise(gas, places.pilot, driven.pilotValve);
  }
  if (places.control >= 0) setBlade(gas, places.control, driven.fuelValveBladeDeg);
  stepGasTrain(gas, air.furnaceGaugePa, plant.ambient.pressurePa, stepS);

  const flow = gas.flowKgS;
  let pilotGas = places.pilotNozzle < 0 ? 0 : (flow[places.pilotNozzle] as number);
  let mainGas = 0;
  const { mainNozzles } = places;
  for (let i = 0; i < mainNozzles.length; i++) mainGas += flow[mainNozzles[i] as number] as number;
  let airWithGas = 0;
  if (gas.air.present) {
    const all = pilotGas + mainGas;
    if (pilotGas > 0) pilotGas *= 1 - airShareOf(gas, places.pilotNozzle);
    mainGas = 0;
    for (let i = 0; i < mainNozzles.length; i++) {
      const e = mainNozzles[i] as number;
      mainGas += (flow[e] as number) * (1 - airShareOf(gas, e));
    }
    airWithGas = ((all - pilotGas - mainGas) * AIR_MOLAR_MASS) / gas.gas.molarMassKgMol;
  }
  const allGas = Math.max(pilotGas, 0) + Math.max(mainGas, 0);

  const { airAround, flameFeed, furnaceFeed } = plant;
  airAround.shaftSpeedRpm = driven.fanBackward ? -driven.fanRpm : driven.fanRpm;
  airAround.bladeDeg = driven.damperBladeDeg;
  airAround.fuelKgS = allGas;
  airAround.furnaceTemperatureK = furnace.gasTemperatureK;
  airAround.flueTemperatureK = furnace.flueTemperatureK;
  airAround.productShare = furnace.productShare;
  airAround.pulsePa = furnace.pulsePa;
  stepAirPath(air, airAround, stepS);

  const dark =
    flame.atRest && driven.sparkW === 0 && pilotGas <= NO_GAS_KGS && mainGas <= NO_GAS_KGS;
  if (!dark) {
    flameFeed.sparkW = driven.sparkW;
    flameFeed.pilotGasKgS = pilotGas;
    flameFeed.mainGasKgS = mainGas;
    flameFeed.airKgS = air.airFlowKgS;
    flameFeed.furnaceAirKg = furnace.furnace.airKg;
    flameFeed.refractoryTemperatureK = furnace.refractoryTemperatureK;
    flameFeed.wallIgnitionK = furnace.wallIgnitionK;
    flameFeed.flash = furnace.flash;
    stepFlame(flame, flameFeed, stepS);
  }

  const allAir = air.airFlowKgS + Math.max(0, airWithGas);
  if (!dark || !putBy(furnace, allAir, allGas, stepS)) {
    furnaceFeed.airKgS = allAir;
    furnaceFeed.gasKgS = allGas;
    furnaceFeed.burntKgS = flame.burntKgS;
    furnaceFeed.igniter = flame.igniter;
    furnaceFeed.waterTemperatureK = vessel.waterTemperatureK;
    furnaceFeed.headDifferentialPa = air.headDifferentialPa;
    furnaceFeed.diffuserShift = flame.parameters.diffuserShift;
    stepFurnace(furnace, furnaceFeed, stepS);
  }
  plant.drumS += stepS;
  plant.drumSteps += 1;
  if (plant.drumSteps >= DRUM_STEPS) {
    const { vesselFeed } = plant;
    vesselFeed.heatW = (furnace.totals.waterJ - plant.heatToDrumJ) / plant.drumS;
    vesselFeed.load = plant.load;
    vesselFeed.feedDemand = driven.feedDemand;
    vesselFeed.pumpFed = driven.feedPump;
    stepVessel(vessel, vesselFeed, plant.drumS);
    stepAnalyser(furnace, plant.drumS);
    plant.heatToDrumJ = furnace.totals.waterJ;
    plant.drumS = 0;
    plant.drumSteps = 0;
  }
}

/** The drum and its pressure change too slowly for every step. */
const DRUM_STEPS = 10;
const PILOT_VALVE = 'pilot-valve';

function findPlaces(gas: GasTrain, parameters: FaultSubject): GasPlaces {
  const { edges } = parameters.gasTrain;
  const edge = (id: string) => gas.edgeIds.indexOf(id);
  const node = (id: string) => gas.nodeIds.indexOf(id);
  const pilot = edge(PILOT_VALVE);
  const behindPilot = pilot < 0 ? new Set<string>() : downstreamOf(parameters, PILOT_VALVE);
  const nozzles = edges.flatMap((e, i) => (e.to === 'furnace' ? [i] : []));
  return {
    regulated: node('regulated'),
    interspace: node('interspace'),
    manifold: node('manifold'),
    upstream: edge('upstream-valve'),
    downstream: edge('downstream-valve'),
    vent: edge('vent-valve'),
    pilot,
    control: edges.findIndex((e) => e.kind === 'control'),
    pilotNozzle: nozzles.find((i) => behindPilot.has((edges[i] as { id: string }).id)) ?? -1,
    mainNozzles: nozzles.filter((i) => !behindPilot.has((edges[i] as { id: string }).id)),
  };
}

/** Ids of an edge and of all edges the gas can go through after it. */
function downstreamOf(parameters: FaultSubject, id: string): Set<string> {
  const { edges } = parameters.gasTrain;
  const found = new Set([id]);
  const points = new Set(edges.filter((e) => e.id === id).map((e) => e.to));
  for (let grew = true; grew; ) {
    grew = false;
    for (const e of edges) {
      if (found.has(e.id) || !points.has(e.from)) continue;
      found.add(e.id);
      points.add(e.to);
      grew = true;
    }
  }
  return found;
}
