import type { Cause, StepName } from '../../../machines/index.ts';
import type {
  Bench,
  PlantFile,
  PlantPart,
  RunEvent,
  Setting,
  TimedAction,
} from '../../engine/index.ts';

/** How the plant stood at one moment. */
export interface Moment {
  readonly t: number;
  readonly step: StepName;
  readonly lockout: Cause | null;
  /** Fuel is let to the burner: the pilot valve, or both main valves. */
  readonly firing: boolean;
  readonly flame: boolean;
  readonly fanRpm: number;
  /** Unburnt gas in the furnace over its lower flammability limit. */
  readonly combustible: number;
  /** Gas in the air of the room over its lower flammability limit, as a nose has it. */
  readonly smell: number;
  /** Pressure at each gas node, Pa. */
  readonly gasPa: Readonly<Record<string, number>>;
  readonly bench: Bench;
}

/** What the leads of a meter were on. */
export interface LeadState {
  /** Between them, or from one of them to its own neutral. */
  readonly live: boolean;
  /** Greatest volts between them. */
  readonly volts: number;
  /** The same at the last moment with the isolator on; null where it was off all the time. */
  readonly voltsBeforeIsolation: number | null;
}

/** One act of the learner, and how the plant stood just before it. */
export interface Act {
  readonly action: TimedAction;
  readonly before: Moment;
  /** Only of a multimeter. */
  readonly leads: LeadState | null;
  /** Only of a look: the part is inside. */
  readonly inside: boolean;
}

/** A joint sprayed or watched for decay: when there was pressure behind it; null where never. */
export interface LeakCheck {
  readonly place: string;
  readonly t: number;
  readonly underPressureS: number | null;
}
export interface Span {
  readonly fromS: number;
  /** Exclusive; the end of the log where it lasted to it. */
  readonly toS: number;
}

/** A log run again, with what judging needs of it. Plain data. */
export interface JobTrace {
  readonly plant: PlantFile;
  readonly parts: readonly PlantPart[];
  readonly arrivedS: number;
  readonly endS: number;
  readonly arrival: Moment;
  readonly end: Moment;
  readonly acts: readonly Act[];
  readonly leakChecks: readonly LeakCheck[];
  /** From when on each joint had pressure behind it after it was last without, by node; see `pressureSince`. */
  readonly pressed: Readonly<Record<string, readonly Span[]>>;
  /** When fuel was let to the burner, and how the plant stood. */
  readonly firings: readonly (Span & { readonly at: Moment })[];
  /** Each entry into the spark check or a trial. */
  readonly lightOffs: readonly Moment[];
  readonly handovers: readonly Moment[];
  readonly events: readonly RunEvent[];
  /** Dials of the same plant with nothing wrong, when the learner came, and at the end. */
  readonly sheetSettings: readonly Setting[];
  readonly settingsAtArrival: readonly Setting[];
  readonly settingsAtEnd: readonly Setting[];
}
