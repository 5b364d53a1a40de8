/** Where in the wiring a device stands. */
import type { WiringParameters } from '../field/index.ts';
import { cutOffOf, type FaultSubject, relayOf, switchOf, temperatureSwitchOf } from './subject.ts';

/** Rungs are wire, element, wire, element, …, wire. */
function findElement(
  wiring: WiringParameters,
  element: string,
): readonly [string[], number] | null {
  for (const rung of wiring.rungs) {
    for (let i = 1; i < rung.length; i += 2) if (rung[i] === element) return [rung, i];
  }
  return null;
}

function hasElement(wiring: WiringParameters, element: string): boolean {
  return findElement(wiring, element) !== null;
}

/** The wires before and after an element that stands in a rung. */
export function wiresAt(wiring: WiringParameters, element: string): readonly [string, string] {
  const found = findElement(wiring, element);
  if (found === null) throw new RangeError(`nothing called ${element} in the wiring`);
  const [rung, i] = found;
  return [rung[i - 1] as string, rung[i + 1] as string];
}

/** Names an element of the wiring by what it belongs to; nothing where the plant has none. */
export type Named = (s: FaultSubject) => string | undefined;

interface Place {
  readonly wiring: WiringParameters;
  readonly element: string;
}

export const loadNamed =
  (id: string): Named =>
  (s) =>
    s.wiring.loads.find((one) => one.id === id)?.id;
export const named =
  (find: (s: FaultSubject) => { readonly id: string } | undefined, suffix: string): Named =>
  (s) => {
    const device = find(s);
    return device === undefined ? undefined : device.id + suffix;
  };
const highLimitOf = (s: FaultSubject) =>
  switchOf(s, 'highLimitMade') ?? temperatureSwitchOf(s, 'highLimitMade');
export const operatingControlOf = (s: FaultSubject) =>
  switchOf(s, 'callForHeat') ?? temperatureSwitchOf(s, 'callForHeat');

export const airflow = named((s) => switchOf(s, 'airProved'), '');
export const lowGas = named((s) => switchOf(s, 'gasPressureAboveLow'), '');
export const highGas = named((s) => switchOf(s, 'gasPressureBelowHigh'), '');
export const highLimit = named(highLimitOf, '');
export const lowWater = named((s) => cutOffOf(s, 'first'), '');
export const safetyContact = named((s) => relayOf(s, 'safetyRelay'), '.contact');

export function placeOf(named: Named) {
  return (s: FaultSubject): Place | undefined => {
    const element = named(s);
    if (element === undefined || !hasElement(s.wiring, element)) return undefined;
    return { wiring: s.wiring, element };
  };
}
