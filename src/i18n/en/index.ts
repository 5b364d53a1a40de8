import { app } from './app.ts';
import { cli } from './cli.ts';
import { scenario } from './scenario.ts';
import { sequence } from './sequence.ts';
import { view } from './view.ts';

/** Every English sentence of the program; a code stands in one file only. */
export const en = { ...app, ...cli, ...scenario, ...sequence, ...view } as const;
