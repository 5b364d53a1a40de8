/** Eyes at the panel and in it: switches as they stand, clock, fuses, relays. */
import { isFuseWhole } from '../../field/index.ts';
import type { RunState } from '../run-state.ts';
import { type LookWord, roughly, type Seen, seen, seenInside } from './look-reading.ts';

const HOURS = 24;

export function lookAtSwitches({ field }: RunState): Seen {
  const { panel } = field;
  const { leftIn, leftAtRate } = field.firingRate.parameters;
  const mode = leftIn === 'automatic' ? panel.firingMode : leftIn;
  const rate = leftIn === 'automatic' ? panel.handRate : leftAtRate;
  const MODES: Record<typeof mode, LookWord> = {
    automatic: 'look.panel.automatic',
    hand: 'look.panel.hand',
    'low fire': 'look.panel.low-fire',
  };
  const words: LookWord[] = [
    panel.callForHeat ? 'look.panel.burner-on' : 'look.panel.burner-off',
    MODES[mode],
  ];
  if (panel.secondSetpoint) words.push('look.panel.second-setpoint');
  if (panel.emergencyStopPressed) words.push('look.panel.emergency-stop-in');
  if (!panel.supplyOn) words.push('look.panel.isolator-off');
  return seen(words, { handRateShare: roughly(rate, 0.01) });
}

/** The hour that the clock shows, beside that of the day, and whether its contact is made. */
export function lookAtClock({ field }: RunState): Seen | null {
  const [clock] = field.timeClocks;
  if (clock === undefined) return null;
  const dayHour = field.dayS / 3600;
  const shown = dayHour + clock.parameters.aheadHours;
  return seen([clock.contact.made ? 'look.clock.made' : 'look.clock.open'], {
    shownHour: roughly(shown - HOURS * Math.floor(shown / HOURS), 0.1),
    dayHour: roughly(dayHour, 0.1),
  });
}

/** 1 whole, 0 broken, by the id of the fuse. */
export function lookAtFuses({ field, faults }: RunState): Seen {
  const fuses = faults.live.wiring.fuses.map(
    ({ id }) => [id, isFuseWhole(field.wiring, id) ? 1 : 0] as const,
  );
  const broken = fuses.some(([, whole]) => whole === 0);
  return seenInside([broken ? 'look.fuse.broken' : 'look.fuse.whole'], Object.fromEntries(fuses));
}

/** 1 pulled in, 0 dropped out, by the id of the relay; a contact that has welded is not seen. */
export function lookAtRelays({ field }: RunState): Seen {
  const relays = field.relays.map(
    ({ parameters, armature }) => [parameters.id, armature.made ? 1 : 0] as const,
  );
  const isIn = relays.some(([, made]) => made === 1);
  return seenInside([isIn ? 'look.relay.in' : 'look.relay.out'], Object.fromEntries(relays));
}
