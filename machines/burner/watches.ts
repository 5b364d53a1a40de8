import type { Cause, StepName } from './terminals.ts';

/**
 * What supervision holds a step to. Each state of the sequence names one watch in its `meta`;
 * the supervision regions read it from context, where entering the state put it.
 */
export interface Watch {
  /** What a flame means where none should be. */
  readonly flameSeen: Cause;
  /** What lost airflow means; null where the step itself answers or none is needed. */
  readonly airLost: Cause | null;
  readonly gasPressure: boolean;
  readonly safetyRelay: boolean;
  /** The point that positions and speed must keep to, once there. */
  readonly keepsTo: 'nothing' | 'light-off' | 'curve';
}

export const WATCHES = {
  rest: {
    flameSeen: 'flame seen at rest',
    airLost: null,
    gasPressure: false,
    safetyRelay: false,
    keepsTo: 'nothing',
  },
  proving: {
    flameSeen: 'flame seen at rest',
    airLost: null,
    gasPressure: true,
    safetyRelay: true,
    keepsTo: 'nothing',
  },
  purging: {
    flameSeen: 'flame seen before fuel',
    airLost: null,
    gasPressure: true,
    safetyRelay: true,
    keepsTo: 'nothing',
  },
  approaching: {
    flameSeen: 'flame seen before fuel',
    airLost: 'airflow not proved',
    gasPressure: true,
    safetyRelay: true,
    keepsTo: 'nothing',
  },
  lighting: {
    flameSeen: 'flame seen before fuel',
    airLost: 'airflow not proved',
    gasPressure: true,
    safetyRelay: true,
    keepsTo: 'light-off',
  },
  firing: {
    flameSeen: 'flame seen at rest',
    airLost: 'airflow lost in service',
    gasPressure: true,
    safetyRelay: true,
    keepsTo: 'nothing',
  },
  modulating: {
    flameSeen: 'flame seen at rest',
    airLost: 'airflow lost in service',
    gasPressure: true,
    safetyRelay: true,
    keepsTo: 'curve',
  },
} as const satisfies Record<string, Watch>;
export type WatchName = keyof typeof WATCHES;

/** What a flame lost means, by the step that had it. */
export const FLAME_LOST = {
  'pilot proving': 'pilot lost',
  'main trial': 'main not lit',
  'main proving': 'main lost',
  'low-fire hold': 'flame lost in service',
  modulation: 'flame lost in service',
  'run down': 'flame lost in service',
} as const satisfies Partial<Record<StepName, Cause>>;
