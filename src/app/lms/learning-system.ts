/** What the page in a package wants of a learning system, whichever language it speaks. */
export const SYSTEM_TROUBLES = [
  /** There is none to be found around the page. */
  'none',
  /** It is there but did not let the session begin. */
  'not begun',
  /** The session is over; another begins when the package is opened from the system again. */
  'session over',
  /** What was sent has not come through; it is tried again. */
  'not reached',
  /** It refused what was sent. */
  'refused',
] as const;
export interface SystemTrouble {
  readonly trouble: (typeof SYSTEM_TROUBLES)[number];
  /** In its own words, where it has any. */
  readonly detail: string;
}

/** `browse` and `review` are for looking: nothing is counted, nothing of the learner's is changed. */
export type SystemMode = 'normal' | 'browse' | 'review';

export interface Report {
  /** 0 to 1. */
  readonly scaled: number;
  /** Null where it is only a matter of having done it. */
  readonly passed: boolean | null;
}
/** What the system has been told of this attempt, and has taken. */
export interface Told {
  readonly completed: boolean;
  readonly passed: boolean;
}

export interface LearningSystem {
  readonly mode: SystemMode;
  /** From which share it is passed; null where the system does not say. */
  readonly mastery: number | null;
  /** The attempt, where the system names it. */
  readonly attempt: string | null;
  /** What it kept of this attempt; null where there is nothing. */
  readonly saved: string | null;
  /** How many characters it keeps; null: as many as it takes. */
  readonly room: number | null;
  /** Where the learner goes when he is done; null where the system has its own way. */
  readonly returnAddress: string | null;
  /** Whether sound is wanted; null where it does not say. */
  readonly sound: boolean | null;
  keep(packed: string): void;
  /** @returns what it has taken by then, of this and before */
  report(report: Report, before: Told): Promise<Told>;
  /** Ends the session, once; what is called after does nothing. */
  leave(): void;
}

/** Null once all is well again. */
export type TellTrouble = (trouble: SystemTrouble | null) => void;

export type Connected =
  | { readonly system: LearningSystem; readonly trouble: null }
  | { readonly system: null; readonly trouble: SystemTrouble };
