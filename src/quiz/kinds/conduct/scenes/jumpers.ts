import { deviceTerm, handOver, jumper, leaving, lookAt, start } from '../acts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { atRest } from '../situations.ts';
import { about } from './task.ts';

/** Contacts that protect, and that a jumper is tempting across. */
const TEMPTING: ReadonlySet<string> = new Set([
  'high-limit',
  'first-low-water',
  'second-low-water',
  'low-gas',
  'high-gas',
  'furnace-pressure',
  'airflow',
  'upstream-valve-closed',
  'downstream-valve-closed',
]);

/** SC-12, SC-17: a jumper across what protects, out before fuel and before the handover, or not. */
export const jumpers: SceneMaker = (facts, chance) => {
  const contacts = facts.elements.filter(
    ({ kind, name }) => kind === 'contact' && TEMPTING.has(name),
  );
  const device = oneOf(contacts, chance)?.name;
  if (device === undefined) return null;
  const situation = atRest(facts, chance);
  const [on, off] = [jumper(device, true), jumper(device, false)];
  const look = lookAt('control relays');
  const started = start(facts.startS);
  return {
    ...situation,
    tells: [situation.tells, about('suspected', deviceTerm(device))],
    before: [],
    safe: [on, look, off, handOver],
    unsafe: [
      { rule: 'SC-12', steps: [on, started, off, handOver] },
      { rule: 'SC-12', steps: [started, on, look, off] },
      { rule: 'SC-17', steps: [on, look, leaving('hand-over-jumper')] },
    ],
    skills: ['limits'],
    difficulty: -0.2,
  };
};
