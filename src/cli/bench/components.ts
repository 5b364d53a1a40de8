/** The components that the comparison with LSODA steps by themselves. */
import { AIR_MOLAR_MASS, createAmbient } from '../../plant/air/index.ts';
import { createTank, stepTank } from '../../plant/furnace/index.ts';
import { createGasTrain, stepGasTrain } from '../../plant/gas/index.ts';
import { createVessel, settleVessel, stepVessel } from '../../plant/vessel/index.ts';

export const components = {
  AIR_MOLAR_MASS,
  createAmbient,
  createTank,
  stepTank,
  createGasTrain,
  stepGasTrain,
  createVessel,
  settleVessel,
  stepVessel,
} as const;
export type Components = typeof components;
