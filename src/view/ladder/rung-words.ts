import { type Channel, indexChannels } from '../channels.ts';
import type { Message } from '../message.ts';
import { createLiveBits } from './live-bits.ts';
import { elementName, stateWord } from './names.ts';
import { signalWires } from './signal-wires.ts';
import type { LadderStep, LadderWiring } from './types.ts';

export interface RungText {
  readonly rung: number;
  readonly text: string;
  /** Belongs to what the current step drives or waits for. */
  readonly isOfStep: boolean;
}

/**
 * The ladder as a list of sentences: every rung with the state of its wires and elements.
 *
 * @param isLive false: as on paper, without a state
 */
export function createRungWords(
  wiring: LadderWiring,
  channels: readonly Channel[],
  message: Message,
  isLive = true,
): (frame: Float64Array, step: LadderStep) => readonly RungText[] {
  const index = indexChannels(channels);
  const live = createLiveBits('wiring.live', wiring.wires.length, index);
  const made = createLiveBits('wiring.made', wiring.elements.length, index);
  const wirePlaces = new Map(wiring.wires.map((name, i) => [name, i]));
  const elementPlaces = new Map(wiring.elements.map((element, i) => [element.name, i]));
  let shown: readonly RungText[] = [];
  let shownStep: LadderStep | null = null;

  const signals = signalWires(wiring);

  const wireText = (name: string): string => {
    const carries = isLive && live.isSet(wirePlaces.get(name) ?? -1);
    const state = signals.has(name) ? 'signal' : carries ? 'live' : 'dead';
    return message(`view.ladder.wire.${state}`, { wire: name });
  };
  const elementText = (name: string): string => {
    const place = elementPlaces.get(name);
    if (place === undefined) return name;
    const element = wiring.elements[place];
    if (!isLive) return elementName(element, message);
    const state = stateWord(element.kind, made.isSet(place), message);
    return message('view.ladder.element', { name: elementName(element, message), state });
  };
  return (frame, step) => {
    const wiresMoved = isLive && live.take(frame);
    const elementsMoved = isLive && made.take(frame);
    if (!wiresMoved && !elementsMoved && step === shownStep && shown.length > 0) return shown;
    shownStep = step;
    const ofStep = rungsOfStep(wiring, step);
    shown = wiring.rungs.map((parts, rung) => ({
      rung,
      isOfStep: ofStep.has(rung),
      text: parts
        .map((part, i) => (i % 2 === 0 ? wireText(part) : elementText(part)))
        .join(message('view.ladder.then')),
    }));
    return shown;
  };
}

/** What a step drives and waits for that the step before did not. */
export function newInStep(step: LadderStep, before: LadderStep): LadderStep {
  return {
    commands: step.commands.filter((name) => !before.commands.includes(name)),
    inputs: step.inputs.filter((name) => !before.inputs.includes(name)),
  };
}

/** Rungs with a terminal of the step, and those with a contact of a relay that such a rung feeds. */
export function rungsOfStep(wiring: LadderWiring, step: LadderStep): ReadonlySet<number> {
  const wanted = new Set([
    ...step.commands.map((name) => `out.${name}`),
    ...step.inputs.map((name) => `in.${name}`),
  ]);
  const found = new Set<number>();
  const relays = new Set<string>();
  wiring.rungs.forEach((parts, rung) => {
    if (!parts.some((part, i) => i % 2 === 1 && wanted.has(part))) return;
    found.add(rung);
    if (!parts.some((part) => part.startsWith('out.'))) return;
    for (const part of parts) if (part.endsWith('.coil')) relays.add(part.slice(0, -COIL.length));
  });
  wiring.rungs.forEach((parts, rung) => {
    if (
      parts.some((part) => part.endsWith(CONTACT) && relays.has(part.slice(0, -CONTACT.length)))
    ) {
      found.add(rung);
    }
  });
  return found;
}
const COIL = '.coil';
const CONTACT = '.contact';
