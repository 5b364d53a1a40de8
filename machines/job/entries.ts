/** A reading kept on paper: what was measured or seen, where, and in which step of the sequence. */
export interface PinEntry {
  readonly type: 'pin';
  readonly what: string;
  readonly place: string;
  /** The second place of a reading between two; empty where there is none. */
  readonly other: string;
  /** As the tool showed it, unit included. */
  readonly reading: string;
  readonly step: string;
}
/** What is held to be the cause, and the pins that speak for it. */
export interface ClaimEntry {
  readonly type: 'claim';
  readonly part: string;
  /** Indexes of pins. */
  readonly why: readonly number[];
  readonly mechanism: string;
}
export interface HandoverEntry {
  readonly type: 'hand over';
  readonly cause: string;
  readonly evidence: string;
  readonly done: string;
  readonly watch: string;
}

/** How much help there is on the way: at every step, when it is asked for, or none before the end. */
export const GUIDANCE_MODES = ['guided', 'practice', 'assessment'] as const;
export type Guidance = (typeof GUIDANCE_MODES)[number];

/** A nudge, the kind of check, the check itself, why it. */
export const HINT_RUNGS = [0, 1, 2, 3] as const;
export type HintRung = (typeof HINT_RUNGS)[number];

/** What one entry of the desk log says. It touches paper only, never the plant. */
export type DeskEvent =
  | {
      readonly type: 'arrive';
      readonly tools: readonly string[];
      /** Left out: practice. */
      readonly guidance?: Guidance;
    }
  | { readonly type: 'begin' }
  | { readonly type: 'ask'; readonly topic: string }
  | { readonly type: 'read sheet' }
  | PinEntry
  | { readonly type: 'note'; readonly text: string }
  /** Parts or causes, the most likely first. */
  | { readonly type: 'suspect'; readonly ranked: readonly string[] }
  /** Help that was taken: a rung of the hint ladder. */
  | { readonly type: 'hint'; readonly rung: HintRung }
  /** How the decisions so far are judged was asked for. */
  | { readonly type: 'feedback' }
  | ClaimEntry
  | { readonly type: 'withdraw' }
  | { readonly type: 'prove' }
  | HandoverEntry
  | { readonly type: 'close' }
  | { readonly type: 'explain'; readonly step: string }
  | { readonly type: 'answer'; readonly step: string; readonly option: number }
  | { readonly type: 'break'; readonly fault: string }
  | { readonly type: 'put back' }
  | { readonly type: 'next' };

/** An entry with its time: simulated s at the run's head, 0 or more. */
export type DeskEntry = { readonly t: number } & DeskEvent;
export type DeskEntryType = DeskEntry['type'];
