import type { Skill } from '../../../machines/job/index.ts';

/** The order in which equal skills come: that of a start. A skill that is new must find its place here. */
const PLACES: Readonly<Record<Skill, number>> = {
  sequence: 0,
  fuel: 1,
  air: 2,
  ignition: 3,
  sensing: 4,
  limits: 5,
  wiring: 6,
  combustion: 7,
  conduct: 8,
};

/** Every skill; a list of its own, since the desk's would bring its charts along. */
export const SKILL_ORDER: readonly Skill[] = (Object.keys(PLACES) as Skill[]).sort(
  (a, b) => PLACES[a] - PLACES[b],
);
