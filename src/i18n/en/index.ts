import { app } from './app.ts';
import { bench } from './bench.ts';
import { cli } from './cli.ts';
import { closeUp } from './close-up.ts';
import { conduct } from './conduct.ts';
import { front } from './front.ts';
import { job } from './job.ts';
import { ladder } from './ladder.ts';
import { scenario } from './scenario.ts';
import { sequence } from './sequence.ts';
import { view } from './view.ts';

/** Every English sentence of the program; a code stands in one file only. The page fetches it in parts. */
export const en = {
  ...front,
  ...app,
  ...bench,
  ...cli,
  ...closeUp,
  ...conduct,
  ...job,
  ...ladder,
  ...scenario,
  ...sequence,
  ...view,
} as const;
