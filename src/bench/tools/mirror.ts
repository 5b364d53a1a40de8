import { LOOK_WHATS, type LookWhat } from '../../engine/index.ts';
import { lookWords } from './look-words.ts';
import { nothingShown } from './plain-reading.ts';
import type { ToolReading, ToolRun, ToolState } from './tool-types.ts';
import { walkFrames } from './walk-frames.ts';

/** What eyes see with light and a mirror: words, no number. */
export function readMirror(run: ToolRun, state: ToolState): ToolReading {
  walkFrames(run, state, [], () => {});
  const what = LOOK_WHATS.find((known) => known === state.use.place) as LookWhat | undefined;
  const look = what === undefined ? null : run.look(what);
  if (look === null) return nothingShown(null, '', ['no signal']);
  return {
    ...nothingShown(null, '', []),
    steady: true,
    words: lookWords(look),
    ...(look.needsOpening && { warn: { code: 'bench.warn.needs-opening' } }),
  };
}
