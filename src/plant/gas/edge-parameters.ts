import { flag, number, type ParameterTable, series, type Values } from '../../quantity/index.ts';

const AREA_DOC = 'effective area, discharge coefficient times opening,';
const LEAK_DOC = 'gas past the shut seat at 100 mbar, at 15 °C and 1013.25 mbar';

/** A cock worked by hand; shut it is tight. */
export const cockParameters = {
  areaM2: number('m²', 1e-7, 0.1, `${AREA_DOC} when open`),
  opening: number('1', 0, 1, 'handle: 0 shut, 1 open; area in proportion', 1),
} as const satisfies ParameterTable;

export const strainerParameters = {
  areaM2: number('m²', 1e-7, 0.1, `${AREA_DOC} when clean`),
  blockedFraction: number('1', 0, 1, 'share of the area that dirt has closed', 0),
} as const satisfies ParameterTable;

export const orificeParameters = {
  areaM2: number('m²', 1e-9, 0.1, `${AREA_DOC} when clean`),
  blockedFraction: number('1', 0, 1, 'share of the area that is closed', 0),
} as const satisfies ParameterTable;

/** A spring-loaded pressure regulator; see regulator.ts for its equations. */
export const regulatorParameters = {
  areaM2: number('m²', 1e-9, 0.1, `${AREA_DOC} at full stroke`),
  setpointPa: number('Pa', 100, 500000, 'outlet gauge pressure at which the plug reaches its seat'),
  springShare: number('1', 0, 1, 'share of its force that the spring still has', 1),
  droopPa: number('Pa', 10, 100000, 'fall of the outlet pressure over the full stroke'),
  lockUpPa: number('Pa', 1, 50000, 'rise above the setpoint that presses the seat tight', 200),
  frictionPa: number(
    'Pa',
    0,
    20000,
    'change of outlet pressure that friction of the stem swallows',
    0,
  ),
  lagS: number('s', 0, 10, 'each of the two lags of the diaphragm, breather clear', 0.003),
  strokeS: number(
    's',
    0.001,
    60,
    'time in which the air of a whole stroke leaves by the clear breather',
    0.06,
  ),
  breatherBlockedFraction: number('1', 0, 0.999, 'share of the breather that is closed', 0),
  diaphragmVolumeDm3: number('dm³', 0, 10, 'gas moved by the diaphragm over the full stroke', 0.5),
  seatLeakDm3H: number('dm³/h', 0, 100000, LEAK_DOC, 0.1),
} as const satisfies ParameterTable;

/** A powered valve: safety shut-off, vent or pilot valve. */
export const shutoffParameters = {
  areaM2: number('m²', 1e-9, 0.1, `${AREA_DOC} when open`),
  openingTimeS: number('s', 0.02, 60, 'time of a whole opening at the slow speed'),
  fastOpenFraction: number('1', 0, 1, 'share of the stroke opened at the fast speed', 0),
  fastStrokeTimeS: number('s', 0.02, 5, 'time of a whole stroke at the fast speed', 0.2),
  closingTimeS: number('s', 0.02, 1, 'time of a whole closing', 0.3),
  sealTravelFraction: number('1', 0, 0.3, 'share of the stroke after the seat has shut', 0.05),
  normallyOpen: flag('open without power', false),
  coilIntact: flag('the coil draws current and works when energised', true),
  stuckOpenFraction: number('1', 0, 1, 'the stem does not close beyond this; 0 is free', 0),
  stuckShutFraction: number('1', 0, 1, 'the stem does not open beyond this; 1 is free', 1),
  seatLeakDm3H: number('dm³/h', 0, 1000000, LEAK_DOC, 0.1),
} as const satisfies ParameterTable;

/** A valve set by a servo: area follows the blade. */
export const controlParameters = {
  areaM2: number('m²', 1e-7, 0.1, `${AREA_DOC} at an open fraction of 1`),
  bladeDeg: series('°', 0, 90, 2, 40, 'blade angles of the area table, rising'),
  openFraction: series('1', 0, 1, 2, 40, 'share of the area at each blade angle'),
  shaftSlipDeg: number('°', -90, 90, 'blade angle minus shaft angle', 0),
} as const satisfies ParameterTable;

export const gasEdgeTables = {
  cock: cockParameters,
  strainer: strainerParameters,
  regulator: regulatorParameters,
  shutoff: shutoffParameters,
  control: controlParameters,
  orifice: orificeParameters,
} as const satisfies Readonly<Record<string, ParameterTable>>;
export type GasEdgeKind = keyof typeof gasEdgeTables;

export type RegulatorParameters = Values<typeof regulatorParameters>;
export type ShutoffParameters = Values<typeof shutoffParameters>;
export type ControlParameters = Values<typeof controlParameters>;

/** One flow path: what it is, which way counts as forward, and its numbers. */
export type GasEdgeParameters = {
  [K in GasEdgeKind]: {
    readonly id: string;
    readonly kind: K;
    readonly from: string;
    readonly to: string;
  } & Values<(typeof gasEdgeTables)[K]>;
}[GasEdgeKind];
