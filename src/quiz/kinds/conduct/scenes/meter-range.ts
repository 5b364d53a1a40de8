import { nextUniform } from '../../../../numeric/index.ts';
import { burnerOff, deviceTerm, isolatorOff, lockOff, meterAcross, stop } from '../acts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { atRest } from '../situations.ts';
import { about } from './task.ts';

const NO_CONTACT_TO_ASK_ABOUT = /isolator|button|switch$|link|stop/;

/** SC-1: the meter on a contact that is live, on a range that is no good for it. */
export const meterRange: SceneMaker = (facts, chance) => {
  const contacts = facts.elements.filter(
    ({ kind, name }) => kind === 'contact' && !NO_CONTACT_TO_ASK_ABOUT.test(name),
  );
  const device = oneOf(contacts, chance)?.name;
  if (device === undefined) return null;
  const situation = atRest(facts, chance);
  const withOhms = nextUniform(chance) < 0.5 ? ('ohms' as const) : ('continuity' as const);
  const otherwise = withOhms === 'ohms' ? 'continuity' : 'ohms';
  const byVolts = nextUniform(chance) < 0.5;
  const off = nextUniform(chance) < 0.5 ? lockOff : isolatorOff;
  return {
    ...situation,
    tells: [situation.tells, about('contact', deviceTerm(device))],
    before: [],
    safe: byVolts ? [meterAcross('volts', device)] : [off, meterAcross(withOhms, device)],
    unsafe: [
      { rule: 'SC-1', steps: [meterAcross(withOhms, device)] },
      { rule: 'SC-1', steps: [meterAcross(otherwise, device)] },
      { rule: 'SC-1', steps: [stop, meterAcross(withOhms, device)] },
      { rule: 'SC-1', steps: [burnerOff, meterAcross(otherwise, device)] },
    ],
    skills: ['wiring'],
    difficulty: 0,
  };
};
