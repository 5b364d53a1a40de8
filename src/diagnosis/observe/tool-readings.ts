import type { ToolReading, ToolUse } from '../../bench/index.ts';
import { checkName, type Reading, STEADY, UNSTEADY } from './reading.ts';

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
  if (reading.value === null) return [];
  const value: Reading = { check, aspect: 'value', value: reading.value };
  return use.tool === 'manometer' ? [value, steadiness(check, reading)] : [value];
}

/** A column that does not come to rest tells of itself, whatever it reads. */
function steadiness(check: string, { steady }: ToolReading): Reading {
  return { check, aspect: STEADY, value: steady ? 'in band' : UNSTEADY };
}

/** A word where there is no number; one that still moves is what it is at that moment. */
function wordOf({ value, flags }: ToolReading): string | null {
  if (flags.includes('over range') || flags.includes('overloaded')) return 'over range';
  return value === null && flags.includes('no signal') ? 'no signal' : null;
}
