import {
  type AirPathState,
  type AmbientState,
  createAirPath,
  createAmbient,
  stepAirPath,
} from '../../../src/plant/air/index.ts';

/** The air side of a 6 MW burner with a variable-speed fan. */
export function dairyAmbient(altitudeM = 0, temperatureC = 20): AmbientState {
  return createAmbient({ altitudeM, temperatureC });
}

export function dairyAirPath(ambient: AmbientState = dairyAmbient()): AirPathState {
  return createAirPath(
    {
      fan: {
        ratedFlowM3S: 2.2,
        ratedPressurePa: 1960,
        ratedSpeedRpm: 1760,
        peakEfficiency: 0.78,
        backwardsShare: 0.3,
      },
      damper: { form: 'opposed blades', faceAreaM2: 0.17, leakShare: 0.005 },
      passages: {
        ratedFlowKgS: 2.4,
        roomOpeningPa: 3,
        roomBlockage: 0,
        screenPa: 80,
        screenBlockage: 0,
        ductPa: 120,
        headPa: 1620,
        headBlockage: 0,
        passPa: 160,
        passBlockage: 0,
        ratedPassTemperatureC: 600,
        ductLengthM: 14,
        ductAreaM2: 0.3,
      },
      stack: { heightM: 5, lossPa: 60, ratedTemperatureC: 230, blockage: 0, damperShut: 0 },
    },
    ambient,
  );
}

/** Blows cold air until the flow has settled. */
export function blow(
  air: AirPathState,
  shaftSpeedRpm: number,
  bladeDeg: number,
  seconds = 10,
  pulsePa = 0,
): AirPathState {
  const coldK = air.ambient.temperatureK;
  for (let i = 0; i < seconds * 100; i++) {
    stepAirPath(
      air,
      {
        shaftSpeedRpm,
        bladeDeg,
        fuelKgS: 0,
        furnaceTemperatureK: coldK,
        flueTemperatureK: coldK,
        productShare: 0,
        pulsePa,
      },
      0.01,
    );
  }
  return air;
}
