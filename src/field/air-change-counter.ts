import { name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type AnalogueInput, arrive, createAnalogueInput } from './analogue-input.ts';
import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';

/**
 * Counts furnace volumes of air while told to: a training device, one way to prove that a purge
 * has moved enough air.
 *
 * Equation: q = q_ref · √(Δp / Δp_ref); changes = ∫ q dt / V. The differential is what its impulse
 * lines bring, so it counts what it measures, which a leaking line or a slipped blade can part
 * from what really flows.
 * Left out: density (flow is at the density of the commissioning day).
 */
export const airChangeCounterParameters = {
  id: name('name of the counter'),
  referenceFlowM3S: number('m³/s', 0.001, 200, 'flow at the reference differential'),
  referencePa: number('Pa', 1, 20000, 'burner-head differential at that flow'),
  volumeM3: number('m³', 0.01, 5000, 'furnace and passes'),
  changesRequired: number('1', 0, 50, 'made when so many are counted'),
  floorPa: number('Pa', 0, 1000, 'differential below which nothing is counted', 5),
  lineShare: number('1', 0, 1, 'share of the differential that arrives', 1),
} as const satisfies ParameterTable;
export type AirChangeCounterParameters = Values<typeof airChangeCounterParameters>;

export interface AirChangeCounter {
  readonly parameters: AirChangeCounterParameters;
  readonly contact: Contact;
  readonly input: AnalogueInput;
  changes: number;
  changesPerSqrtPa: number;
  changesRequired: number;
  floorPa: number;
}

export function createAirChangeCounter(
  parameters: AirChangeCounterParameters,
  board: ContactBoard,
): AirChangeCounter {
  const counter: AirChangeCounter = {
    parameters,
    contact: createContact(board, false),
    input: createAnalogueInput(),
    changes: 0,
    changesPerSqrtPa: 0,
    changesRequired: 0,
    floorPa: 0,
  };
  prepareAirChangeCounter(counter);
  return counter;
}

export function prepareAirChangeCounter(counter: AirChangeCounter): void {
  const p = counter.parameters;
  counter.changesPerSqrtPa =
    (p.referenceFlowM3S / p.volumeM3) * Math.sqrt(p.lineShare / p.referencePa);
  counter.changesRequired = p.changesRequired;
  counter.floorPa = p.lineShare > 0 ? p.floorPa / p.lineShare : Number.POSITIVE_INFINITY;
}

/** A step with the command standing. */
export function countAir(counter: AirChangeCounter, differentialPa: number, stepS: number): void {
  const measuredPa = arrive(counter.input, differentialPa);
  if (measuredPa > counter.floorPa) {
    counter.changes += counter.changesPerSqrtPa * Math.sqrt(measuredPa) * stepS;
  }
  moveContact(counter.contact, counter.changes >= counter.changesRequired);
}

/** The command has fallen: the next count begins from nothing. */
export function clearAir(counter: AirChangeCounter): void {
  counter.changes = 0;
  moveContact(counter.contact, false);
}
