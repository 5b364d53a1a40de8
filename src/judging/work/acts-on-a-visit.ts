import { ACTION_TABLES, type ActionType, INSTRUCTOR_ACTS } from '../../engine/index.ts';

/** On a visit faults come and go by what hands do, not by name, and nobody makes the weather. */
export const ACTS_ON_A_VISIT: readonly ActionType[] = (
  Object.keys(ACTION_TABLES) as ActionType[]
).filter((type) => !INSTRUCTOR_ACTS.includes(type));
