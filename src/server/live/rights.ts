import type { Hello, ToServer } from '../../classroom/index.ts';

export type Role = Hello['role'];

/** Who may say what. */
export const RIGHTS: { readonly [K in keyof ToServer]: readonly Role[] } = {
  join: ['door'],
  'take seat': ['door'],
  say: ['instructor'],
  since: ['seat', 'instructor', 'projector'],
  // An instructor's is the work of the one plant.
  work: ['seat', 'instructor'],
  state: ['seat'],
  'poll answer': ['seat'],
  'hand in': ['seat'],
  head: ['instructor'],
  watch: ['instructor', 'projector'],
};
