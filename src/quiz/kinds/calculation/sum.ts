/** A sum from the plant's own numbers: what is given, how it is reckoned, what slips make of it. */
import type { Skill } from '../../../../machines/job/index.ts';
import {
  formatNumber,
  fromDisplay,
  type QuantityKind,
  type UnitSystem,
} from '../../../quantity/index.ts';
import type { ItemRun } from '../../item/item.ts';
import type { Statement, Term } from '../../item/statement.ts';

export interface Given {
  /** SI, as the instrument or the sheet has it, before it is rounded to what is shown. */
  readonly value: number;
  readonly of: QuantityKind;
}
export type Givens = Readonly<Record<string, Given>>;
/** The value of a given, by its name. */
export type Values = (name: string) => number;
/** What is given, as it stands in a sentence. */
export type Amounts = (name: string) => Term;

export interface Slip {
  /** SI. */
  readonly value: number;
  readonly why: Statement;
}

export interface Sum {
  readonly topic: string;
  readonly skills: readonly Skill[];
  readonly difficulty: number;
  readonly run: ItemRun | null;
  readonly caution: Statement;
  readonly givens: Givens;
  readonly tells: (amount: Amounts) => readonly Statement[];
  readonly asks: Statement;
  /** SI. */
  readonly reckon: (value: Values) => number;
  readonly of: QuantityKind;
  readonly tolerance: number;
  readonly toleranceAbs?: number;
  readonly working: (amount: Amounts, value: Values, key: number) => readonly Statement[];
  readonly slips: (value: Values, key: number) => readonly Slip[];
}

/** Each given with the digits that the reader of a system sees of it, back in SI. */
export function asShown(givens: Givens, system: UnitSystem): Givens {
  return Object.fromEntries(
    Object.entries(givens).map(([name, { value, of }]) => [
      name,
      { value: shownValue(value, of, system), of },
    ]),
  );
}

/** A value with the digits that are shown of it, in SI. */
export function shownValue(value: number, of: QuantityKind, system: UnitSystem): number {
  return fromDisplay(Number(formatNumber(value, of, system)), of, system);
}

export function valuesOf(givens: Givens): Values {
  return (name) => givenOf(givens, name).value;
}

export function amountsOf(givens: Givens): Amounts {
  return (name) => ({ is: 'amount', ...givenOf(givens, name) });
}

export function amount(value: number, of: QuantityKind): Term {
  return { is: 'amount', value, of };
}

/** For a sentence that is to hold a bare number: so many digits behind the point. */
export function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}

function givenOf(givens: Givens, name: string): Given {
  const given = givens[name];
  if (given === undefined) throw new Error(`the sum has no given ${name}`);
  return given;
}
