/** Shipped jobs as cases, and what their plants read. */
import { fileURLToPath } from 'node:url';
import { atlasFile, atlasFolder, readAtlas } from '../../../src/cli/atlas/files.ts';
import { soundSetup } from '../../../src/cli/sound-setup.ts';
import {
  type Case,
  caseOf,
  type DecisionAct,
  type Plan,
  planOf,
  type Reading,
  type Seen,
} from '../../../src/diagnosis/index.ts';
import { jobSetup } from '../../../src/scenario/index.ts';
import { library } from '../../support/library.ts';

const folder = atlasFolder(fileURLToPath(new URL('../../..', import.meta.url)));
const plans = new Map<string, Plan>();

export function shippedCase(id: string): Case {
  const job = library.jobs.find((one) => one.id === id);
  const setup = jobSetup(library, 'job', id);
  if (job === undefined || setup === null) throw new Error(`no job ${id}`);
  const atlas = readAtlas(atlasFile(folder, job.plant));
  const sound = soundSetup(library, job.plant);
  if (atlas === null || sound === null) throw new Error(`no atlas of ${job.plant}`);
  const plan = plans.get(job.plant) ?? planOf(sound);
  plans.set(job.plant, plan);
  const own = job.cause ?? job.faults.map(({ fault }) => fault);
  return caseOf(atlas, plan, setup, own, job.tools, job.accept);
}

/** What a check reads of the plant of a case, wherever that is asked. */
export function seenOf({ truth }: Case, check: string, only?: readonly string[]): readonly Seen[] {
  const byMoment = new Map<string, Reading[]>();
  for (const [name, value] of truth ?? []) {
    const [, own, moment = '', aspect = ''] = /^(.*)@([^@#]*)#(.*)$/.exec(name) ?? [];
    if (own !== check || (only !== undefined && !only.includes(moment))) continue;
    byMoment.set(moment, [...(byMoment.get(moment) ?? []), { check, aspect, value }]);
  }
  return [...byMoment].map(([moment, readings]) => ({ moment, readings }));
}

export function arriveAt(theCase: Case): DecisionAct {
  const panel = seenOf(theCase, 'watch one start|', ['lockout', 'standing']);
  return { kind: 'arrive', seen: [...seenOf(theCase, 'history|'), ...panel] };
}

export function make(theCase: Case, check: string): DecisionAct {
  return { kind: 'check', check, seen: seenOf(theCase, check) };
}
