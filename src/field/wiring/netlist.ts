import { listElements, type WiredParameters, type WiringElement } from './elements.ts';
import { EARTH } from './parameters.ts';

export interface PlacedElement extends WiringElement {
  readonly fromWire: string;
  readonly toWire: string;
}

/** Wires and elements in the order in which the rungs name them. */
export interface Netlist {
  readonly wires: readonly string[];
  readonly elements: readonly PlacedElement[];
}

/** @throws RangeError on an element that the plant does not have; `findWiringIssues` says it first */
export function layNetlist(parameters: WiredParameters): Netlist {
  const { rungs, sources } = parameters.wiring;
  const known = new Map(listElements(parameters).map((element) => [element.name, element]));
  const wires = new Set<string>();
  const elements: PlacedElement[] = [];
  for (const rung of rungs) {
    for (let i = 0; i < rung.length; i += 2) wires.add(rung[i] as string);
    for (let i = 1; i < rung.length - 1; i += 2) {
      const element = known.get(rung[i] as string);
      if (element === undefined) throw new RangeError(`no element named ${rung[i]}`);
      const fromWire = rung[i - 1] as string;
      const toWire = rung[i + 1] as string;
      elements.push({
        name: element.name,
        kind: element.kind,
        ohm: element.ohm,
        pullInVolts: element.pullInVolts,
        dropOutVolts: element.dropOutVolts,
        condition: element.condition,
        leakS: element.leakS,
        needed: element.needed,
        fromWire,
        toWire,
      });
    }
  }
  for (const { live, neutral } of sources) {
    wires.add(live);
    wires.add(neutral);
  }
  wires.delete(EARTH);
  return { wires: [...wires], elements };
}
