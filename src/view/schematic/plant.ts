/** What the drawing needs to know of a plant; made from the plant file by the page. */
export interface SchematicPlant {
  readonly id: string;
  readonly title: string;
  readonly gasTrain: GasTrainGraph;
  readonly hasVariableSpeedFan: boolean;
  readonly hasPilot: boolean;
  /** Without it a shut valve is only seen to be shut, never proved to be. */
  readonly hasProofOfClosure?: boolean;
  /** The space between the main valves is proved before or after a run. */
  readonly hasValveProving?: boolean;
  /** One servo moves air damper and fuel valve over a linkage. */
  readonly hasOneServo?: boolean;
  /** The fan is driven over a belt. */
  readonly hasBelt?: boolean;
  /** Bit of the recorded wiring that says the fan's contactor is in. */
  readonly contactorPlace?: number;
  readonly vesselKind: VesselKind;
  /** Free words of the plant file: 'UV', 'IR', 'ionisation'. */
  readonly sensorKind: string;
  /** Gas at full fire, kg/s: what moves the marks of every pipe at full speed. */
  readonly ratedGasKgS?: number;
}

export type VesselKind = 'water-tube' | 'fire-tube' | 'hot water';

export type TrainEdgeKind = 'cock' | 'strainer' | 'regulator' | 'shutoff' | 'control' | 'orifice';

export interface GasTrainGraph {
  readonly nodes: readonly { readonly id: string }[];
  readonly edges: readonly TrainEdge[];
}

export interface TrainEdge {
  readonly id: string;
  readonly kind: TrainEdgeKind;
  readonly from: string;
  readonly to: string;
  readonly normallyOpen?: boolean;
}

/** Nodes that bound every train; they are not volumes of it. */
export const SUPPLY = 'supply';
export const ATMOSPHERE = 'atmosphere';
export const FURNACE = 'furnace';
