/** What the plant shows the field: each reading from the place where its instrument stands. */
import type { FieldReadings } from '../field/index.ts';
import type { PlantState } from './plant-state.ts';

export function gatherReadings(plant: PlantState, readings: FieldReadings): void {
  const { gas, air, flame, places } = plant;
  const gauge = gas.pressureGaugePa;
  if (places.regulated >= 0) readings.regulatedPa = gauge[places.regulated] as number;
  if (places.interspace >= 0) readings.interspacePa = gauge[places.interspace] as number;
  if (places.upstream >= 0) readings.upstreamStem = gas.stem[places.upstream] as number;
  if (places.downstream >= 0) readings.downstreamStem = gas.stem[places.downstream] as number;
  readings.windboxPa = air.windboxGaugePa;
  readings.headDifferentialPa = air.headDifferentialPa;
  readings.furnacePa = air.furnaceGaugePa;
  readings.pilotIntensity = flame.pilotIntensity;
  readings.mainIntensity = flame.mainIntensity;
  readings.mainLift = flame.mainLift;
  readings.sparkW = flame.sparkW;
  readings.loadTorqueNm = air.shaftTorqueNm;
}

/** What changes slowly, and is looked at by slow devices only. */
export function gatherSlowReadings(plant: PlantState, readings: FieldReadings): void {
  const { gas, furnace, vessel, places } = plant;
  if (places.manifold >= 0) {
    readings.manifoldPa = gas.pressureGaugePa[places.manifold] as number;
  }
  readings.vesselPa = vessel.gaugePa;
  readings.vesselLevelM = vessel.levelM;
  readings.vesselK = vessel.waterTemperatureK;
  readings.returnK = vessel.returnTemperatureK;
  readings.steamKgS = vessel.steamKgS;
  readings.furnaceK = furnace.gasTemperatureK;
}
