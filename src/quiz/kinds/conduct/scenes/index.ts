/** Every kind of situation, and how often it comes. */
import type { SceneMaker } from '../scene.ts';
import { blindResets } from './blind-resets.ts';
import { dials } from './dials.ts';
import { electricalWork } from './electrical-work.ts';
import { gasTrain } from './gas-train.ts';
import { inside } from './inside.ts';
import { jointsTested } from './joints-tested.ts';
import { jumpers } from './jumpers.ts';
import { leaving } from './leaving.ts';
import { meterRange } from './meter-range.ts';
import { servos } from './servos.ts';
import { smellOfGas } from './smell-of-gas.ts';
import { unburntGas } from './unburnt-gas.ts';

export const SCENES: readonly SceneMaker[] = [
  electricalWork,
  meterRange,
  gasTrain,
  jointsTested,
  blindResets,
  unburntGas,
  smellOfGas,
  jumpers,
  dials,
  servos,
  inside,
  leaving,
];
