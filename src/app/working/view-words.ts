import { message } from '../../i18n/index.ts';
import { formatQuantity, kindOfUnit, type Unit, type UnitSystem } from '../../quantity/index.ts';
import type { Message, Reading, Vocabulary } from '../../view/index.ts';
import type { Facts } from '../session/protocol.ts';

export const viewMessage: Message = (code, params) => message(code, params);

export function vocabularyOf({ stepNames, inputs, commands, targets }: Facts): Vocabulary {
  return { steps: stepNames, inputs, commands, targets };
}

/** Above this a pressure is a vessel's, below it that of gas or air. */
const VESSEL_FROM_PA = 2e5;

/** How the drawings write a reading in the reader's units. */
export function readingIn(units: UnitSystem): Reading {
  return (value, unit) => {
    if (!Number.isFinite(value)) return '–';
    if (unit === 'Pa' && Math.abs(value) >= VESSEL_FROM_PA) {
      return formatQuantity(value, 'vessel pressure', units);
    }
    if (unit === '1') return formatQuantity(value, 'share', units);
    return formatQuantity(value, kindOfUnit(unit as Unit), units);
  };
}
