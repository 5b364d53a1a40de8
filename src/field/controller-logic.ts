import { type Contact, type ContactBoard, createContactBoard } from './contact.ts';
import { ALL_INPUTS, INPUT_BITS, type InputTerminal } from './terminals.ts';

/**
 * What the controller finds out by itself from what it measures: flame, positions, speeds,
 * interspace, air changes, supply. An input that nothing here decides reads made, so a plant
 * without a device reads as if that device always proved.
 */
export interface ControllerLogic {
  readonly board: ContactBoard;
  readonly decisions: Contact[];
  readonly masks: number[];
  word: number;
}

export function createControllerLogic(): ControllerLogic {
  return { board: createContactBoard(), decisions: [], masks: [], word: 0 };
}

export function decides(logic: ControllerLogic, terminal: InputTerminal, decision: Contact): void {
  logic.decisions.push(decision);
  logic.masks.push(~INPUT_BITS[terminal]);
}

export function readLogic(logic: ControllerLogic): number {
  if (!logic.board.changed) return logic.word;
  logic.board.changed = false;
  const { decisions, masks } = logic;
  let word = ALL_INPUTS;
  for (let i = 0; i < decisions.length; i++) {
    if (!(decisions[i] as Contact).made) word &= masks[i] as number;
  }
  logic.word = word;
  return word;
}
