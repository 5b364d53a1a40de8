import { type Drive, readDriveCurrent } from './drive.ts';

/** What the display of a frequency converter shows. */
export interface DriveSight {
  readonly frequencyHz: number;
  readonly currentA: number;
  readonly state: 'dark' | 'ready' | 'running' | 'at limit';
}

const DARK_SHARE = 0.5;
const NEAR_LIMIT = 0.98;
/** Output below what is asked for by less than this is no more than the ramp. */
const BEHIND_HZ = 0.3;

export function lookAtDrive(drive: Drive): DriveSight {
  const { frequencyHz, contactor, voltsShare } = drive;
  const currentA = readDriveCurrent(drive);
  if (voltsShare < DARK_SHARE) return { frequencyHz: 0, currentA: 0, state: 'dark' };
  if (!contactor.made) return { frequencyHz, currentA, state: 'ready' };
  return { frequencyHz, currentA, state: isAtLimit(drive) ? 'at limit' : 'running' };
}

/** Held back by slip at the current limit, and not there yet. */
function isAtLimit(drive: Drive): boolean {
  const { frequencyHz, motorRadS, hzPerRadS, motoringSlipHz, targetRpm, hzPerFanRpm } = drive;
  const slipHz = frequencyHz - motorRadS * hzPerRadS;
  const behindHz = Math.min(drive.maxHz, targetRpm * hzPerFanRpm) - frequencyHz;
  return slipHz >= NEAR_LIMIT * motoringSlipHz && behindHz > BEHIND_HZ;
}
