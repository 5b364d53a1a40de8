import { readAnalyser } from './analyser.ts';
import { readFlameMeter } from './flame-meter.ts';
import { readLeakSpray } from './leak-spray.ts';
import { readManometer } from './manometer.ts';
import { readMirror } from './mirror.ts';
import { readMultimeter } from './multimeter.ts';
import { readStrobe } from './strobe.ts';
import { readThermometer } from './thermometer.ts';
import type { ToolId, ToolReading, ToolRun, ToolState, ToolUse } from './tool-types.ts';

const READERS: Readonly<Record<ToolId, (run: ToolRun, state: ToolState) => ToolReading>> = {
  manometer: readManometer,
  multimeter: readMultimeter,
  'flame-signal meter': readFlameMeter,
  'flue-gas analyser': readAnalyser,
  'leak spray': readLeakSpray,
  strobe: readStrobe,
  thermometer: readThermometer,
  'mirror and torch': readMirror,
};

/**
 * What the display of a connected tool shows now.
 *
 * Takes only the frames since the last call and changes `state` in place; the same frames give the
 * same reading however often it was asked for. The run is left as it is.
 *
 * @param use as given to `createToolState`; the state is of this use alone
 */
export function readTool(run: ToolRun, use: ToolUse, state: ToolState): ToolReading {
  return READERS[use.tool](run, state);
}
