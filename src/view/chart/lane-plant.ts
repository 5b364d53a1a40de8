/** What the chart needs to know of a plant; the drawing's own description fits. */
export interface LanePlant {
  readonly gasTrain: { readonly edges: readonly { readonly id: string }[] };
}

export function isOnTrain(plant: LanePlant, edgeId: string): boolean {
  return plant.gasTrain.edges.some((edge) => edge.id === edgeId);
}
