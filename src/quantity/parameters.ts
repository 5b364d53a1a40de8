/**
 * Parameter tables: the one description of a component's data.
 *
 * A component says its parameters once, as a table of unit, sane range and meaning.
 * The TypeScript type, the scenario schema, the JSON Schema for editors and the
 * bounds of a fault's severity are all read from that table.
 */
import type { Unit } from './units.ts';

export interface NumberParameter {
  readonly kind: 'number';
  readonly unit: Unit;
  readonly min: number;
  readonly max: number;
  readonly doc: string;
  /** Used when a file leaves the value out; without one the value is required. */
  readonly default?: number;
}
export interface ChoiceParameter<T extends string = string> {
  readonly kind: 'choice';
  readonly options: readonly T[];
  readonly doc: string;
  readonly default?: T;
}
export interface FlagParameter {
  readonly kind: 'flag';
  readonly doc: string;
  readonly default?: boolean;
}
export interface NameParameter {
  readonly kind: 'name';
  readonly doc: string;
  readonly default?: string;
}
/** A list of numbers of one unit, such as the ordinates of a curve. */
export interface SeriesParameter {
  readonly kind: 'series';
  readonly unit: Unit;
  readonly min: number;
  readonly max: number;
  readonly minLength: number;
  readonly maxLength: number;
  readonly doc: string;
}
export type Parameter =
  | NumberParameter
  | ChoiceParameter
  | FlagParameter
  | NameParameter
  | SeriesParameter;
export type ParameterTable = Readonly<Record<string, Parameter>>;

export type ValueOf<P extends Parameter> = P extends NumberParameter
  ? number
  : P extends ChoiceParameter<infer T>
    ? T
    : P extends FlagParameter
      ? boolean
      : P extends NameParameter
        ? string
        : number[];

/** The values a table describes. Mutable, because a fault is a change of a parameter. */
export type Values<T extends ParameterTable> = { -readonly [K in keyof T]: ValueOf<T[K]> };

export function number(
  unit: Unit,
  min: number,
  max: number,
  doc: string,
  fallback?: number,
): NumberParameter {
  return fallback === undefined
    ? { kind: 'number', unit, min, max, doc }
    : { kind: 'number', unit, min, max, doc, default: fallback };
}
export function choice<const T extends string>(
  options: readonly T[],
  doc: string,
  fallback?: NoInfer<T>,
): ChoiceParameter<T> {
  return fallback === undefined
    ? { kind: 'choice', options, doc }
    : { kind: 'choice', options, doc, default: fallback };
}
export function flag(doc: string, fallback?: boolean): FlagParameter {
  return fallback === undefined ? { kind: 'flag', doc } : { kind: 'flag', doc, default: fallback };
}
export function name(doc: string, fallback?: string): NameParameter {
  return fallback === undefined ? { kind: 'name', doc } : { kind: 'name', doc, default: fallback };
}
export function series(
  unit: Unit,
  min: number,
  max: number,
  minLength: number,
  maxLength: number,
  doc: string,
): SeriesParameter {
  return { kind: 'series', unit, min, max, minLength, maxLength, doc };
}
