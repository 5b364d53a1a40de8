import { TOOL_IDS } from '../../machines/job/index.ts';
import { isMessage, say, sayWord, slugOf } from '../i18n/index.ts';

/** As `partsOfCheck` has it; the page does not load the diagnosis for it. */
export function partsOf(check: string) {
  const [what = '', place = '', other = ''] = check.split('|');
  return { what, place, other };
}

/** A step as it stands within a sentence. */
export function stepWords(step: string): string {
  return sayWord('step', step, '.title').toLowerCase().replace(':', ',');
}

/** An id of a plant file as people would write it. */
export function idWords(id: string): string {
  return id
    .replace(/[-.]/g, ' ')
    .replace(/([a-z])([A-Z])/g, (_all, before: string, after: string) => `${before} ${after}`)
    .toLowerCase();
}

/** An element of the wiring by what a technician calls it; where no name is kept, by its id in words. */
export function deviceName(id: string): string {
  const words = idWords(id);
  const code = `told.device.${slugOf(words)}`;
  return isMessage(code) ? say(code) : words;
}

/** `high-limit:1` is end 1 of the high limit. */
export function terminalOf(id: string): { readonly device: string; readonly end: string } {
  const [device = '', end = ''] = id.split(/:(?=[12]$)/);
  return { device, end };
}

/** A label that stands within a sentence; what is all signs and capitals is left as it is. */
export function lowerFirst(text: string): string {
  return /^[A-Z][a-z ]/.test(text) ? `${text.charAt(0).toLowerCase()}${text.slice(1)}` : text;
}

/** The tool of the bag that a check takes; null where eyes, ears and paper are enough. */
export function toolFor(check: string): string | null {
  const { what } = partsOf(check);
  if (what === 'volts' || what === 'continuity') return 'multimeter';
  return (TOOL_IDS as readonly string[]).includes(what) ? what : null;
}
