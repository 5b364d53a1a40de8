import { contextFrom } from './context.ts';
import { sequence } from './sequence/index.ts';
import { burnerSetup } from './setup.ts';
import { drives, flame, limits, reset, supply } from './supervision/index.ts';

/** The burner: the sequence, and the supervision that is always on beside it. */
export const burnerMachine = burnerSetup.createMachine({
  id: 'burner',
  type: 'parallel',
  context: ({ input }) => contextFrom(input),
  options: { maxIterations: 200 },
  on: { inputs: { actions: 'takeInputs' } },
  states: { sequence, flame, limits, drives, supply, reset },
});
