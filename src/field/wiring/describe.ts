import type { ElementKind, WiredParameters } from './elements.ts';
import { layNetlist } from './netlist.ts';

export interface DescribedElement {
  readonly name: string;
  readonly kind: ElementKind;
  /** Wires at its first and second terminal. */
  readonly from: string;
  readonly to: string;
}

/** Everything a ladder needs: wires and elements in the order of the recorded bits, and the rungs. */
export interface WiringDescription {
  readonly wires: readonly string[];
  readonly elements: readonly DescribedElement[];
  readonly rungs: readonly (readonly string[])[];
}

export function describeWiring(parameters: WiredParameters): WiringDescription {
  const { wires, elements } = layNetlist(parameters);
  return {
    wires,
    elements: elements.map(({ name, kind, fromWire, toWire }) => ({
      name,
      kind,
      from: fromWire,
      to: toWire,
    })),
    rungs: parameters.wiring.rungs,
  };
}
