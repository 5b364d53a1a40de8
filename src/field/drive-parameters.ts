import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { motorParameters } from './motor.ts';

export const variableSpeedParameters = {
  id: name('name of the drive'),
  kind: choice(['variable speed'], 'a frequency converter'),
  ...motorParameters,
  maxHz: number('Hz', 10, 100, 'highest output frequency', 60),
  rampUpS: number('s', 0.5, 300, 'from rest to the highest frequency'),
  rampDownS: number('s', 0.5, 300, 'from the highest frequency to rest'),
  currentLimitA: number('A', 0.1, 1500, 'the drive lets no more current through'),
  brakingShare: number('1', 0, 2, 'braking torque it can take, as a share of rated', 0.2),
  slipCompensation: number('1', 0, 1, 'share of the slip it adds back', 1),
  proofMakeRpm: number('rpm', 1, 300, 'at a speed: feedback within this of it', 30),
  proofBreakRpm: number('rpm', 1, 500, 'no longer at a speed: beyond this', 60),
  proofDwellS: number('s', 0, 30, 'how long it must stand there, steady', 1),
} as const satisfies ParameterTable;
export type VariableSpeedParameters = Values<typeof variableSpeedParameters>;

export const fixedSpeedParameters = {
  id: name('name of the drive'),
  kind: choice(['fixed speed'], 'a contactor on the mains'),
  ...motorParameters,
  breakdownShare: number('1', 1.2, 5, 'breakdown torque over rated torque', 2.5),
} as const satisfies ParameterTable;
export type FixedSpeedParameters = Values<typeof fixedSpeedParameters>;
export type DriveParameters = VariableSpeedParameters | FixedSpeedParameters;
