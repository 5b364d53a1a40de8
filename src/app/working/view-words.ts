import { message } from '../../i18n/index.ts';
import { kindOfUnit, type Unit, type UnitSystem } from '../../quantity/index.ts';
import type { Message, Reading, Vocabulary } from '../../view/index.ts';
import { readingText } from '../../wording/index.ts';
import type { Facts } from '../session/protocol.ts';

export const viewMessage: Message = (code, params) => message(code, params);

export function vocabularyOf({ stepNames, inputs, commands, targets }: Facts): Vocabulary {
  return { steps: stepNames, inputs, commands, targets };
}

/** How the drawings write a reading in the reader's units; what it is a reading of decides how. */
export function readingIn(units: UnitSystem, { channels }: Pick<Facts, 'channels'>): Reading {
  const kinds = new Map(channels.map(({ id, kind }) => [id, kind]));
  return (value, unit, channel) => {
    const kind = kinds.get(channel ?? '') ?? kindOfUnit(unit as Unit);
    return readingText(value, kind, units, channel ?? '');
  };
}
