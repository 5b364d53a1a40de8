/** Eyes along the air path: blade, servos, fan and what drives it, tubes and openings. */
import { type DriveSight, lookAtDrive } from '../../field/index.ts';
import type { RunState } from '../run-state.ts';
import { openingWord, wayInside, wayWord } from './look-at-gas.ts';
import { type LookWord, roughly, type Seen, seen, seenInside } from './look-reading.ts';

type ServoPlace = 'damper' | 'fuelValve';

const AT_END_DEG = 3;
/** Slower than this the eye follows every blade: it coasts or turns in the draught. */
const TURNS_RPM = 5;
const SLACK = 0.015;
const JUMPS = 0.15;
/** Of a tube's lag: water stands in it. */
const WATER_S = 5;
const TUBE_OFF = 0.95;

/** The slot in the end of the blade's shaft. */
export function lookAtBlade({ field }: RunState): Seen | null {
  const { damper, outputs } = field;
  if (damper === null) return null;
  const deg = outputs.damperBladeDeg;
  return seen([bladeWord(deg)], { bladeDeg: roughly(deg, 1) });
}

/** The pointer on the servo's own shaft, which is not the blade's. */
export function lookAtPointer({ field }: RunState, which: ServoPlace): Seen | null {
  const servo = field[which];
  const isDampersOwn = which === 'fuelValve' && servo === field.damper;
  if (servo === null || isDampersOwn) return null;
  const words: LookWord[] = [servo.moving ? 'look.pointer.turning' : 'look.pointer.still'];
  if (servo.heldDeg >= 0) words.push('look.pointer.held-by-hand');
  return seen(words, { pointerDeg: roughly(servo.motorDeg, 1) });
}

export function lookAtEndSwitch({ field }: RunState): Seen | null {
  const { damper } = field;
  if (damper === null || !damper.endSwitchFitted) return null;
  return seen([damper.endPushed ? 'look.end-switch.pressed' : 'look.end-switch.free'], {
    camDeg: roughly(damper.parameters.endSwitchDeg, 1),
  });
}

/** What the converter's own display says; a fan on a contactor has none. */
export function lookAtDisplay({ field }: RunState): Seen | null {
  const { drive } = field;
  if (drive === null || !drive.variable) return null;
  const { frequencyHz, currentA, state } = lookAtDrive(drive);
  const WORDS: Record<DriveSight['state'], LookWord> = {
    dark: 'look.drive.dark',
    ready: 'look.drive.ready',
    running: 'look.drive.running',
    'at limit': 'look.drive.at-limit',
  };
  if (state === 'dark') return seen([WORDS.dark]);
  return seen([WORDS[state]], {
    frequencyHz: roughly(frequencyHz, 0.1),
    currentA: roughly(currentA, 0.1),
  });
}

/** Behind its guard: how slack it is, from the speed it loses. */
export function lookAtBelt({ field }: RunState): Seen | null {
  const { drive } = field;
  if (drive === null) return null;
  const slip = drive.parameters.beltSlip;
  const word =
    slip < SLACK ? 'look.belt.tight' : slip < JUMPS ? 'look.belt.slack' : 'look.belt.jumps';
  return seenInside([word], { slackShare: roughly(slip, 0.01) });
}

export function lookAtRotation({ field }: RunState): Seen | null {
  const { drive } = field;
  if (drive === null) return null;
  if (drive.fanRpm < TURNS_RPM) return seen(['look.fan.still']);
  return seen([drive.backward ? 'look.fan.turns-wrong' : 'look.fan.turns-right']);
}

export function lookAtContactor({ field }: RunState): Seen | null {
  const { drive } = field;
  if (drive === null) return null;
  const isIn = drive.welded || (drive.running && drive.coilSound);
  const words: LookWord[] = [isIn ? 'look.contactor.in' : 'look.contactor.out'];
  if (drive.burnt || drive.welded) words.push('look.contactor.burnt');
  return seenInside(words);
}

export function lookAtTube({ faults }: RunState): Seen | null {
  const air = faults.live.field.switches.find(({ feeds }) => feeds === 'airProved');
  if (air === undefined) return null;
  const words: LookWord[] = [air.tubeShare < TUBE_OFF ? 'look.tube.off' : 'look.tube.on'];
  if (air.tubeLagS > WATER_S) words.push('look.tube.water');
  return seen(words, { onShare: roughly(air.tubeShare, 0.1) });
}

export function lookAtScreen({ faults }: RunState): Seen {
  return wayOutside(faults.live.airPath.passages.screenBlockage);
}

export function lookAtRoomOpenings({ faults }: RunState): Seen {
  return wayOutside(faults.live.airPath.passages.roomBlockage);
}

export function lookAtFlue({ faults }: RunState): Seen {
  return wayInside(faults.live.airPath.stack.blockage);
}

/** Its handle, against the plate with the marks. */
export function lookAtStackDamper({ faults }: RunState): Seen {
  const opening = 1 - faults.live.airPath.stack.damperShut;
  return seen([openingWord(opening)], { openShare: roughly(opening, 0.05) });
}

/** Soot on the tubes, whether it narrows them or keeps the heat in. */
export function lookAtPasses({ faults }: RunState): Seen {
  const { airPath, furnace } = faults.live;
  return wayInside(Math.max(airPath.passages.passBlockage, furnace.fouling));
}

function wayOutside(closedShare: number): Seen {
  return seen([wayWord(closedShare)], { closedShare: roughly(closedShare, 0.1) });
}

function bladeWord(deg: number): LookWord {
  if (deg <= AT_END_DEG) return 'look.blade.shut';
  return deg >= 90 - AT_END_DEG ? 'look.blade.open' : 'look.blade.part-open';
}
