import { burnerSetup } from '../setup.ts';
import { tripFor } from '../transitions.ts';

const alwaysWatched = [
  { guard: 'emergencyStopPressed', ...tripFor('emergency stop', 'SQ-35') },
  { guard: 'waterVeryLow', ...tripFor('water very low', 'SQ-35') },
  { guard: 'highLimitOpen', ...tripFor('high limit open', 'SQ-35') },
  { guard: 'furnacePressureHigh', ...tripFor('furnace pressure high', 'SQ-35') },
] as const;
const watchedByStep = [
  { guard: 'gasPressureLowWhenWatched', ...tripFor('gas pressure low', 'SQ-37') },
  { guard: 'gasPressureHighWhenWatched', ...tripFor('gas pressure high', 'SQ-37') },
  { guard: 'airflowLost', target: 'silent', actions: 'tripAirflowLost', meta: { rule: 'SQ-38' } },
] as const;

/** Supervision of the limits. Only the first low water clears itself. */
export const limits = burnerSetup.createStateConfig({
  initial: 'silent',
  on: { 'locked out': '.silent' },
  states: {
    made: {
      always: [
        ...alwaysWatched,
        ...watchedByStep,
        {
          guard: 'waterLow',
          target: 'waterLow',
          actions: { type: 'trip', params: { cause: 'water low' } },
          meta: { rule: 'SQ-36' },
        },
      ],
    },
    /** The burner is down or on its way down: no step that watches gas or air is left or begun. */
    waterLow: {
      always: [...alwaysWatched, { guard: 'waterBack', target: 'made', meta: { rule: 'SQ-36' } }],
    },
    silent: {
      on: { awake: 'made' },
    },
  },
});
