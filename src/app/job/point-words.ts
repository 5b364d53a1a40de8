import { lookPlaceName, placeLabel, toolOf } from '../../bench/index.ts';
import type { LookWhat } from '../../engine/index.ts';
import { sayMessage, sayWord } from '../../i18n/index.ts';
import type { Facts } from '../session/protocol.ts';

type Points = Pick<Facts, 'testPoints'>;

/** A test point in words, for the tool that goes there; one that is not known shows its own name. */
export function pointWords(facts: Points, id: string, tool = ''): string {
  const point = facts.testPoints.find((each) => each.id === id);
  return point === undefined ? id : sayMessage(placeLabel(point, tool));
}

export function toolName(id: string): string {
  const tool = toolOf(id);
  return tool === null ? id : sayMessage(tool.name);
}

/** Where something was read: one place, or from one to another. */
export function placeWords(facts: Points, place: string, other: string, tool = ''): string {
  const first = pointWords(facts, place, tool);
  return other === '' ? first : `${first} ↔ ${pointWords(facts, other, tool)}`;
}

/** What a pinned reading is of: a tool at a place, something looked at, heard or smelt. */
export function pinWords(facts: Points, pin: { what: string; place: string; other: string }) {
  if (pin.what === 'look') return placeName(pin.place as LookWhat);
  if (pin.place === '') return sayWord('job.sense', pin.what);
  return `${toolName(pin.what)}, ${placeWords(facts, pin.place, pin.other, pin.what)}`;
}

/** What can be looked at, in words. */
export function placeName(what: LookWhat): string {
  return sayMessage(lookPlaceName(what));
}
