/** What the chart needs to know of a plant; the drawing's own description fits. */
export interface LanePlant {
  readonly gasTrain: { readonly edges: readonly { readonly id: string }[] };
  readonly hasVariableSpeedFan: boolean;
  readonly hasProofOfClosure?: boolean;
  readonly hasValveProving?: boolean;
  /** One servo moves damper and fuel valve: one lane says where both are. */
  readonly hasOneServo?: boolean;
  readonly vesselKind: 'water-tube' | 'fire-tube' | 'hot water';
}

export function isOnTrain(plant: LanePlant, edgeId: string): boolean {
  return plant.gasTrain.edges.some((edge) => edge.id === edgeId);
}
