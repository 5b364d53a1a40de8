import type { ToolReading, ToolUse } from '../../bench/index.ts';
import { checkName, type Reading, UNSTEADY } from './reading.ts';

/** Numbers of a display with several lines that tell causes apart; the rest is made of these. */
const LINES_TAKEN = ['oxygen', 'carbon-monoxide', 'temperature'];
const LINE = 'bench.line.';

/** What a connected tool tells; nothing of a meter on wires, which `wireReadings` takes. */
export function toolReadings(use: ToolUse, reading: ToolReading): readonly Reading[] {
  const check = checkName(use.tool, use.place, use.other);
  const word = wordOf(reading);
  if (use.tool === 'flue-gas analyser') {
    return (reading.lines ?? []).flatMap(({ what, value }): Reading[] => {
      const aspect = what.code.slice(LINE.length);
      if (!LINES_TAKEN.includes(aspect)) return [];
      return [{ check, aspect, value: value ?? 'over range' }];
    });
  }
  if (use.tool === 'leak spray') {
    const code = reading.note?.code ?? '';
    return [{ check, aspect: 'bubbles', value: code.slice(code.lastIndexOf('.') + 1) }];
  }
  if (word !== null) return [{ check, aspect: 'value', value: word }];
  return reading.value === null ? [] : [{ check, aspect: 'value', value: reading.value }];
}

/** A word where a number would mislead. */
function wordOf({ value, flags, steady, lines }: ToolReading): string | null {
  if (flags.includes('over range') || flags.includes('overloaded')) return 'over range';
  if (value === null) return flags.includes('no signal') ? 'no signal' : null;
  // A flame meter keeps least and most: what swings by half its value is not read as a value.
  const swings = lines === undefined && !steady && flags.includes('settling');
  return swings ? UNSTEADY : null;
}
