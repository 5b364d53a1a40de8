import {
  createGasTrain,
  energise,
  findEdge,
  findNode,
  type GasEdgeParameters,
  type GasTrain,
  type GasTrainParameters,
  type MixtureParameters,
  stepGasTrain,
} from '../../../src/plant/gas/index.ts';

export const AMBIENT_PA = 101325;
export const STEP_S = 0.01;

export const METHANE: MixtureParameters = {
  methane: 1,
  ethane: 0,
  propane: 0,
  butane: 0,
  hydrogen: 0,
  nitrogen: 0,
  carbonDioxide: 0,
};

type Edge<K extends GasEdgeParameters['kind']> = Extract<GasEdgeParameters, { kind: K }>;
type Ends = { id: string; from: string; to: string };

export function orifice(ends: Ends, areaM2: number): Edge<'orifice'> {
  return { ...ends, kind: 'orifice', areaM2, blockedFraction: 0 };
}

export function cock(ends: Ends, areaM2: number): Edge<'cock'> {
  return { ...ends, kind: 'cock', areaM2, opening: 1 };
}

export function shutoff(
  ends: Ends,
  areaM2: number,
  rest: Partial<Edge<'shutoff'>> = {},
): Edge<'shutoff'> {
  return {
    ...ends,
    kind: 'shutoff',
    areaM2,
    openingTimeS: 1,
    fastOpenFraction: 0,
    fastStrokeTimeS: 0.2,
    closingTimeS: 0.5,
    sealTravelFraction: 0.05,
    normallyOpen: false,
    coilIntact: true,
    stuckOpenFraction: 0,
    stuckShutFraction: 1,
    seatLeakDm3H: 0.1,
    ...rest,
  };
}

export function regulator(
  ends: Ends,
  areaM2: number,
  setpointPa: number,
  droopPa: number,
  rest: Partial<Edge<'regulator'>> = {},
): Edge<'regulator'> {
  return {
    ...ends,
    kind: 'regulator',
    areaM2,
    setpointPa,
    springShare: 1,
    droopPa,
    lockUpPa: 200,
    frictionPa: 0,
    lagS: 0.003,
    strokeS: 0.06,
    breatherBlockedFraction: 0,
    diaphragmVolumeDm3: 0.5,
    seatLeakDm3H: 0.1,
    ...rest,
  };
}

export function control(ends: Ends, areaM2: number): Edge<'control'> {
  return {
    ...ends,
    kind: 'control',
    areaM2,
    bladeDeg: [0, 15, 30, 60, 90],
    openFraction: [0.004, 0.066, 0.21, 0.64, 1],
    shaftSlipDeg: 0,
  };
}

/** A train with valve proving, vent and pilot, in the size of a 6 MW burner. */
export function largeTrain(): GasTrainParameters {
  return {
    mixture: { ...METHANE },
    temperatureK: 288.15,
    supply: {
      pressureGaugePa: 20000,
      ratedFlowKgS: 0.12,
      ratedDropPa: 1000,
      volumeDm3: 40,
      airDm3: 0,
    },
    nodes: [
      { id: 'inlet', volumeDm3: 8, startGaugePa: 20000, escapeDm3H: 0 },
      { id: 'regulated', volumeDm3: 15, startGaugePa: 10100, escapeDm3H: 0 },
      { id: 'interspace', volumeDm3: 12, startGaugePa: 0, escapeDm3H: 0 },
      { id: 'manifold', volumeDm3: 5, startGaugePa: 0, escapeDm3H: 0 },
      { id: 'nozzle-inlet', volumeDm3: 4, startGaugePa: 0, escapeDm3H: 0 },
      { id: 'pilot', volumeDm3: 0.5, startGaugePa: 0, escapeDm3H: 0 },
    ],
    edges: [
      cock({ id: 'cock', from: 'supply', to: 'inlet' }, 4.5e-3),
      regulator({ id: 'regulator', from: 'inlet', to: 'regulated' }, 1.55e-3, 10000, 770),
      shutoff({ id: 'upstream-valve', from: 'regulated', to: 'interspace' }, 3.5e-3, {
        openingTimeS: 12,
      }),
      shutoff({ id: 'vent-valve', from: 'interspace', to: 'atmosphere' }, 4e-5, {
        openingTimeS: 0.5,
        normallyOpen: true,
      }),
      shutoff({ id: 'downstream-valve', from: 'interspace', to: 'manifold' }, 3.5e-3),
      control({ id: 'fuel-valve', from: 'manifold', to: 'nozzle-inlet' }, 2.7e-3),
      orifice({ id: 'nozzle', from: 'nozzle-inlet', to: 'furnace' }, 1.3e-3),
      shutoff({ id: 'pilot-valve', from: 'regulated', to: 'pilot' }, 4e-5, { openingTimeS: 0.2 }),
      orifice({ id: 'pilot-orifice', from: 'pilot', to: 'furnace' }, 2.1e-5),
    ],
  };
}

/** A small burner: two valves, no vent, no pilot. */
export function smallTrain(): GasTrainParameters {
  return {
    mixture: { ...METHANE },
    temperatureK: 288.15,
    supply: {
      pressureGaugePa: 5000,
      ratedFlowKgS: 0.008,
      ratedDropPa: 200,
      volumeDm3: 10,
      airDm3: 0,
    },
    nodes: [
      { id: 'regulated', volumeDm3: 3, startGaugePa: 2000, escapeDm3H: 0 },
      { id: 'interspace', volumeDm3: 2, startGaugePa: 0, escapeDm3H: 0 },
      { id: 'head', volumeDm3: 1, startGaugePa: 0, escapeDm3H: 0 },
    ],
    edges: [
      regulator({ id: 'regulator', from: 'supply', to: 'regulated' }, 2.5e-4, 2000, 200, {
        lockUpPa: 60,
        diaphragmVolumeDm3: 0.1,
      }),
      shutoff({ id: 'upstream-valve', from: 'regulated', to: 'interspace' }, 4e-4),
      shutoff({ id: 'downstream-valve', from: 'interspace', to: 'head' }, 4e-4),
      orifice({ id: 'nozzle', from: 'head', to: 'furnace' }, 1.7e-4),
    ],
  };
}

export function edgeOf<K extends GasEdgeParameters['kind']>(
  parameters: GasTrainParameters,
  id: string,
  kind: K,
): Edge<K> {
  const edge = parameters.edges.find((one) => one.id === id);
  if (edge?.kind !== kind) throw new Error(`no ${kind} ${id}`);
  return edge as Edge<K>;
}

export function run(train: GasTrain, seconds: number, furnaceGaugePa = 0, stepS = STEP_S): void {
  const steps = Math.round(seconds / stepS);
  for (let i = 0; i < steps; i++) stepGasTrain(train, furnaceGaugePa, AMBIENT_PA, stepS);
}

export function pressureOf(train: GasTrain, node: string): number {
  return train.pressureGaugePa[findNode(train, node)] as number;
}

export function flowOf(train: GasTrain, edge: string): number {
  return train.flowKgS[findEdge(train, edge)] as number;
}

export function stemOf(train: GasTrain, edge: string): number {
  return train.stem[findEdge(train, edge)] as number;
}

export function power(train: GasTrain, edge: string, on: boolean): void {
  energise(train, findEdge(train, edge), on);
}

/** One closed volume that leaks to the open air through an effective area. */
export function leakingVolume(volumeDm3: number, areaM2: number, startGaugePa: number): GasTrain {
  return createGasTrain({
    mixture: { ...METHANE },
    temperatureK: 288.15,
    supply: { pressureGaugePa: 0, ratedFlowKgS: 0.1, ratedDropPa: 100, volumeDm3: 1, airDm3: 0 },
    nodes: [{ id: 'volume', volumeDm3, startGaugePa, escapeDm3H: 0 }],
    edges: [orifice({ id: 'leak', from: 'volume', to: 'atmosphere' }, areaM2)],
  });
}
