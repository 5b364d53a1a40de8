import type { Channel } from '../channels.ts';
import type { Message } from '../message.ts';

/** The wiring of a plant as the engine describes it; wires and elements in the order of their bits. */
export interface LadderWiring {
  readonly sources: readonly LadderSource[];
  readonly wires: readonly string[];
  readonly elements: readonly LadderElement[];
  /** Wire, element, wire, …, wire. */
  readonly rungs: readonly (readonly string[])[];
}
export interface LadderSource {
  readonly live: string;
  readonly neutral: string;
  readonly volts: number;
  readonly kind: 'alternating' | 'direct';
}
export interface LadderElement {
  readonly name: string;
  readonly kind: string;
  /** What it is on this plant, where its name says something else. */
  readonly called?: string | undefined;
  /** What moves a contact, where the plant file tells. */
  readonly operator?: ContactOperator | undefined;
  /** A break contact: what moves it opens it. */
  readonly breaks?: boolean | undefined;
}
export type ContactOperator =
  | 'push button'
  | 'stop button'
  | 'hand switch'
  | 'pressure'
  | 'temperature'
  | 'level'
  | 'position'
  | 'relay'
  | 'clock';

export interface LadderOptions {
  readonly wiring: LadderWiring;
  readonly channels: readonly Channel[];
  readonly message: Message;
}

/** What a step drives and waits for, by the names of the machine's terminals. */
export interface LadderStep {
  readonly commands: readonly string[];
  readonly inputs: readonly string[];
}

export interface Ladder {
  /** The state of every wire and element at a moment, past or present. */
  showFrame(frame: Float64Array): void;
  /** Mark the rungs of a step; `follow` brings into view what it newly drives, else waits for. */
  setStep(step: LadderStep, follow: boolean): void;
  zoomBy(factor: number): void;
  resize(): void;
  destroy(): void;
}
