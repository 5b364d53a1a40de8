import { flag, number, type ParameterTable, type Values } from '../../quantity/index.ts';

/** What every vessel has. */
const common = {
  metalHeatJKgK: number('J/kg', 300, 800, 'specific heat of the metal, per kelvin', 500),
  heatLagS: number('s', 0, 200, 'lag of the heating surface between gas and water', 8),
  heatLossW: number('W', 0, 2e6, 'heat lost to the boiler house at normal pressure or temperature'),
} as const satisfies ParameterTable;

/** What every vessel that makes steam has: load, feed water, safety valve, gauge glass. */
const steam = {
  normalPressurePa: number('Pa', 2e4, 1e7, 'gauge pressure for which all flows are stated'),
  steamKgS: number('kg/s', 0.005, 100, 'steam the load takes wide open at normal pressure'),
  accumulatorM3: number('m³', 0, 500, 'water of a steam accumulator on the header', 0),
  feedTemperatureC: number('°C', 5, 300, 'feed water temperature', 105),
  feedKgS: number('kg/s', 0.005, 150, 'feed with the valve wide open at normal pressure'),
  feedShutOffPa: number(
    'Pa',
    3e4,
    2e7,
    'gauge pressure in the vessel that the feed pump just holds',
  ),
  feedPumpDropShare: number(
    '1',
    0,
    0.9,
    'share of the fall of pressure in the pump itself, valve wide open; the rest is the valve',
    0.3,
  ),
  feedPumpRuns: flag('the feed pump turns when its motor is fed', true),
  feedValveS: number('s', 0, 120, 'lag of the feed valve; 0 where the pump alone is switched', 5),
  feedValveStuck: flag('the feed valve stays where it is', false),
  feedValveStiction: number('1', 0, 1, 'change of demand that the feed valve does not follow', 0),
  feedValveLeak: number('1', 0, 1, 'opening that is left when the feed valve is driven shut', 0),
  safetyValvePa: number('Pa', 3e4, 1.5e7, 'gauge pressure at which the safety valve opens'),
  safetyValveKgS: number('kg/s', 0.005, 150, 'steam it passes when open, at that pressure'),
  safetyValveWorks: flag('the safety valve lifts at its pressure', true),
  safetyValveLeak: number('1', 0, 1, 'share of its flow that passes the shut seat', 0),
  waterLossKgS: number(
    'kg/s',
    0,
    50,
    'water that leaves by blow-down or a leak, at normal pressure',
    0,
  ),
  gaugeGlassCockShut: flag('a cock of the gauge glass is shut: it shows what it showed', false),
} as const satisfies ParameterTable;

/** A drum with tubes in which water circulates by itself. */
export const waterTubeParameters = {
  drumVolumeM3: number('m³', 0.05, 200, 'drum, water and steam'),
  drumNormalM3: number('m³', 0.02, 150, 'drum below normal level, water and bubbles'),
  drumSurfaceM2: number('m²', 0.05, 200, 'water surface in the drum at normal level'),
  riserVolumeM3: number('m³', 0.01, 200, 'heated tubes in which steam rises'),
  downcomerVolumeM3: number('m³', 0.01, 200, 'unheated tubes and headers below the drum'),
  riserMetalKg: number('kg', 10, 1e6, 'metal of the heated tubes'),
  drumMetalKg: number('kg', 0, 1e6, 'metal of the drum'),
  otherMetalKg: number('kg', 0, 1e6, 'all other metal that follows the water temperature', 0),
  downcomerAreaM2: number('m²', 1e-3, 5, 'flow area of the downcomers'),
  circulationFriction: number(
    '1',
    1,
    1000,
    'friction of the circulation in heads of the downcomers',
    25,
  ),
  bubbleS: number('s', 0.5, 60, 'time steam stays below the surface of the drum'),
  bubbleM3: number('m³', 0, 100, 'steam below the surface of the drum if none of it condensed'),
  bubbleSteamKgS: number(
    'kg/s',
    0.001,
    100,
    'steam out of the risers from which that volume is held',
  ),
  bubbleMomentum: number(
    '1',
    0,
    2,
    'how much of a surge of riser flow carries steam to the surface',
    0.3,
  ),
  ...common,
  ...steam,
} as const satisfies ParameterTable;

/** A shell of boiling water with the fire in tubes. */
export const fireTubeParameters = {
  shellVolumeM3: number('m³', 0.05, 300, 'water and steam space of the shell'),
  shellNormalM3: number('m³', 0.03, 250, 'shell below normal level, water and bubbles'),
  surfaceM2: number('m²', 0.05, 200, 'water surface at normal level'),
  metalKg: number('kg', 50, 1e6, 'metal that follows the water temperature'),
  bubbleS: number('s', 0.2, 30, 'time steam bubbles stay below the surface', 3),
  flashShare: number(
    '1',
    0,
    1,
    'share of the steam flashing at a fall of pressure that swells the water; 0.3 to 0.7',
    0.5,
  ),
  ...common,
  ...steam,
} as const satisfies ParameterTable;

/** A boiler of a closed heating system: no steam, no level. */
export const hotWaterParameters = {
  boilerWaterM3: number('m³', 0.005, 100, 'water of the boiler'),
  metalKg: number('kg', 5, 2e5, 'metal of the boiler that follows its water'),
  systemWaterM3: number('m³', 0.01, 500, 'water of pipes and heat emitters'),
  ratedHeatW: number('W', 1000, 5e7, 'heat the building takes at full load and rated temperatures'),
  ratedFlowC: number('°C', 40, 180, 'rated temperature of the water leaving the boiler', 82),
  ratedReturnC: number('°C', 20, 170, 'rated temperature of the water coming back', 71),
  roomC: number('°C', 5, 30, 'temperature of the rooms', 20),
  shuntShare: number('1', 0, 0.9, 'share of the flow that is mixed straight into the return', 0),
  circulatingPumpRuns: flag('the circulating pump turns when its motor is fed', true),
  pumpShare: number('1', 0, 1.2, 'circulation over what the rated temperatures need', 1),
  thermosiphonShare: number('1', 0, 0.3, 'circulation left without the pump', 0.02),
  expansionVesselM3: number('m³', 1e-3, 50, 'gas of the expansion vessel at the filling pressure'),
  fillGaugePa: number('Pa', 1e4, 1e6, 'gauge pressure, cold'),
  safetyValvePa: number('Pa', 3e4, 2e6, 'gauge pressure at which the safety valve opens'),
  safetyValveKgS: number('kg/s', 0.005, 50, 'water it passes when open'),
  safetyValveWorks: flag('the safety valve lifts at its pressure', true),
  ...common,
} as const satisfies ParameterTable;

export const vesselTables = {
  'water-tube': waterTubeParameters,
  'fire-tube': fireTubeParameters,
  'hot water': hotWaterParameters,
} as const satisfies Readonly<Record<string, ParameterTable>>;
export type VesselKind = keyof typeof vesselTables;

export type VesselParametersOf<K extends VesselKind> = { readonly kind: K } & Values<
  (typeof vesselTables)[K]
>;
export type WaterTubeParameters = VesselParametersOf<'water-tube'>;
export type FireTubeParameters = VesselParametersOf<'fire-tube'>;
export type HotWaterParameters = VesselParametersOf<'hot water'>;
export type SteamParameters = WaterTubeParameters | FireTubeParameters;
export type VesselParameters = WaterTubeParameters | FireTubeParameters | HotWaterParameters;
