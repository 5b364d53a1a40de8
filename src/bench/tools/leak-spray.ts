import { LEAK_SPRAY } from './instruments.ts';
import { nothingShown } from './plain-reading.ts';
import type { ToolFlag, ToolReading, ToolRun, ToolState } from './tool-types.ts';
import { connectedS, walkFrames } from './walk-frames.ts';

/**
 * Soapy water on the joints of one part of the train: what eyes make of what escapes there now.
 * Bubbles take time to grow, a leak below the threshold makes none, and without pressure behind it
 * no leak can: then nothing seen means nothing.
 */
export function readLeakSpray(run: ToolRun, state: ToolState): ToolReading {
  const { place } = state.use;
  walkFrames(run, state, [`gas.${place}.pressure`], (frame, [pressure]) => {
    const pa = pressure === undefined || pressure < 0 ? 0 : (frame[pressure] as number);
    state.count = pa < LEAK_SPRAY.leastPa ? 0 : state.count + 1;
  });
  const watchedS = state.count * run.frameS;
  const look = run.look('gas joints', { spray: true });
  if (look === null) return nothingShown(null, '', ['no signal']);
  if (state.count === 0 && connectedS(state) > 0) {
    return {
      ...nothingShown(null, '', ['no pressure']),
      steady: true,
      note: { code: 'bench.note.spray-no-pressure' },
    };
  }
  const grown = watchedS >= LEAK_SPRAY.watchS;
  const flags: ToolFlag[] = grown ? [] : ['settling'];
  const note = { code: `bench.note.${grown ? wordOf(look.values[place] ?? 0) : 'spray-watch'}` };
  return { ...nothingShown(null, '', flags), steady: grown, note };
}

function wordOf(kgS: number): string {
  if (kgS < LEAK_SPRAY.seenKgS) return 'spray-none';
  if (kgS < LEAK_SPRAY.quickKgS) return 'spray-slow';
  return kgS < LEAK_SPRAY.blownKgS ? 'spray-quick' : 'spray-blown';
}
