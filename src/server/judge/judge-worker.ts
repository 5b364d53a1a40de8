/** One thread that runs logs again, so that nothing else of the server waits for it. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { gunzipSync } from 'node:zlib';
import type { LearnerLibrary } from '../../scenario/index.ts';
import { judgeInThread } from './judge-in-thread.ts';
import type { JudgeTask } from './judge-task.ts';

export interface JudgeData {
  readonly library: LearnerLibrary;
  readonly atlasFolder: string;
}

const { library, atlasFolder } = workerData as JudgeData;
const judge = judgeInThread(library, readAtlas);

parentPort?.on('message', (task: JudgeTask) => {
  parentPort?.postMessage(judge(task));
});

function readAtlas(plant: string): string | null {
  // A plant of someone's own may be called anything.
  if (!/^[a-z0-9-]+$/.test(plant)) return null;
  const file = join(atlasFolder, `${plant}.atlas`);
  return existsSync(file) ? gunzipSync(readFileSync(file)).toString() : null;
}
