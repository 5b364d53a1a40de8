import type { Channel } from '../channels.ts';
import type { Message } from '../message.ts';
import type { HeldLeads, Lead } from './leads.ts';

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

/** Which standard's symbols a drawing uses: IEC 60617, or North American practice. */
export const SYMBOL_SETS = ['IEC', 'NA'] as const;
export type SymbolSetName = (typeof SYMBOL_SETS)[number];

export interface LadderOptions {
  readonly wiring: LadderWiring;
  readonly channels: readonly Channel[];
  readonly message: Message;
  /** False: drawn as on paper, without a state; only leads tell. True if left out. */
  readonly live?: boolean;
  /** IEC if left out. */
  readonly symbols?: SymbolSetName;
  /** With this, terminals take the leads of a meter; told of every change that a hand makes. */
  readonly onLeads?: (leads: HeldLeads) => void;
  /** The terminal under the keyboard's cursor, in words; '' when it is none. */
  readonly onPointed?: (label: string) => void;
}

/** What is on the ladder beside the leads in use: other meters, and wires put across by hand. */
export interface LadderTag {
  readonly kind: 'meter' | 'jumper';
  /** One or two letters. */
  readonly tag: string;
  readonly from: string | null;
  readonly to: string | null;
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
  setSymbols(symbols: SymbolSetName): void;
  /** @param single a clamp round one wire, not two leads */
  setLeads(leads: HeldLeads, single?: boolean): void;
  setTags(tags: readonly LadderTag[]): void;
  /** A hand takes a lead from its holder; it comes along until the pointer is let go. */
  dragLead(lead: Lead, event: PointerEvent): void;
  /** Scrolls to a wire, a device or a terminal and marks it; null takes the mark away. */
  showPlace(id: string | null): void;
  zoomBy(factor: number): void;
  resize(): void;
  destroy(): void;
}
