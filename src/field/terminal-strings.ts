import { type Contact, type ContactBoard, createContactBoard } from './contact.ts';
import { ALL_INPUTS, INPUT_BITS, type InputTerminal } from './terminals.ts';

/**
 * Which contacts stand in series before which input terminal. A terminal with no contact before
 * it reads made, so a plant without a device reads as if that device always proved.
 */
export interface TerminalStrings {
  readonly board: ContactBoard;
  readonly contacts: Contact[];
  readonly masks: number[];
  word: number;
}

export function createTerminalStrings(): TerminalStrings {
  return { board: createContactBoard(), contacts: [], masks: [], word: 0 };
}

export function standInSeries(
  strings: TerminalStrings,
  terminal: InputTerminal,
  contact: Contact,
): void {
  strings.contacts.push(contact);
  strings.masks.push(~INPUT_BITS[terminal]);
}

export function readTerminals(strings: TerminalStrings): number {
  if (!strings.board.changed) return strings.word;
  strings.board.changed = false;
  const { contacts, masks } = strings;
  let word = ALL_INPUTS;
  for (let i = 0; i < contacts.length; i++) {
    if (!(contacts[i] as Contact).made) word &= masks[i] as number;
  }
  strings.word = word;
  return word;
}
