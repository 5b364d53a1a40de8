import { NO_FAULT } from '../../../machines/job/index.ts';
import type { PlantFile } from '../../engine/index.ts';
import { findFault, HAND_ACTS, remediesOf } from '../../faults/index.ts';
import type { Cause } from '../reasoning/particles.ts';

/** By which parts each cause may be named; the first is where it is mended. */
export interface PartsOfCauses {
  /** Of each cause, all its names. */
  readonly names: readonly (readonly string[])[];
  /** Causes that a part may be named for, as places in the causes. */
  readonly causesOf: (part: string) => readonly number[];
  /** Causes that work of this kind on this part ends. */
  readonly endedBy: (part: string, way: string) => readonly number[];
  /** Parts that causes are mended at, in the order of the causes. */
  readonly main: readonly string[];
}

/** A cause is named by the part that an act ends it at, by each other such part, or by what the fault is of. */
export function partsOfCauses(causes: readonly Cause[], plant: PlantFile): PartsOfCauses {
  const names = causes.map(({ fault }) => namesOf(fault, plant));
  const works = new Map<string, readonly number[]>();
  const byPart = new Map<string, number[]>();
  names.forEach((own, cause) => {
    for (const part of own) {
      const others = byPart.get(part);
      if (others === undefined) byPart.set(part, [cause]);
      else others.push(cause);
    }
  });
  return {
    names,
    causesOf: (part) => byPart.get(part) ?? [],
    endedBy: (part, way) => {
      const name = `${part}|${way}`;
      const known = works.get(name);
      if (known !== undefined) return known;
      const ended = endedBy(byPart.get(part) ?? [], causes, isMendedBy(plant, part, way));
      works.set(name, ended);
      return ended;
    },
    main: [...new Set(names.flatMap(([first]) => (first === undefined ? [] : [first])))],
  };
}

/** Whether work of this kind on this part ends the fault; hands that put it right count as an adjustment. */
function isMendedBy(plant: PlantFile, part: string, way: string): (id: string) => boolean {
  return (id) => {
    const fault = findFault(id);
    if (fault === undefined) return id === part;
    return remediesOf(fault, plant).some(
      (one) => one.part === part && (one.way === way || (way === BY_HAND && isHandAct(one.way))),
    );
  };
}

/** Dials are turned, and what was left wrong is put right. */
export const BY_HAND = 'adjust';

export function isHandAct(way: string): boolean {
  return HAND_ACTS.some((one) => one === way);
}

function endedBy(
  of: readonly number[],
  causes: readonly Cause[],
  isMended: (id: string) => boolean,
): readonly number[] {
  return of.filter((cause) => {
    const fault = causes[cause]?.fault ?? null;
    return fault !== null && isMended(fault);
  });
}

function namesOf(id: string | null, plant: PlantFile): readonly string[] {
  if (id === null) return [NO_FAULT];
  const fault = findFault(id);
  // Nobody knows what is mended there: it goes by its own name.
  if (fault === undefined) return [id];
  const parts = remediesOf(fault, plant).map(({ part }) => part);
  return [...new Set([...parts, fault.component])];
}
