import type { Atlas, AtlasKey } from './atlas.ts';
import type { Band } from './band.ts';

/** Bins are written as one character a particle, from here on. */
const FIRST_CHARACTER = 48;
const FORMAT = 1;

/** As it is kept in a file: columns that are alike are written once. */
interface AtlasFile {
  readonly format: number;
  readonly plant: string;
  readonly fingerprint: string;
  readonly faults: readonly (string | null)[];
  readonly priors: readonly number[];
  readonly particles: readonly number[];
  readonly severities: readonly number[];
  readonly reachedS: Readonly<Record<string, number>>;
  readonly checks: readonly string[];
  readonly moments: readonly string[];
  readonly aspects: readonly string[];
  readonly bins: readonly (readonly string[])[];
  readonly columns: readonly string[];
  /** Check, moment, aspect, bins, column, and where a number's bins end. */
  readonly keys: readonly (readonly number[])[];
}

export function encodeAtlas(atlas: Atlas): string {
  const checks = createNames();
  const moments = createNames();
  const aspects = createNames();
  const bins = createNames();
  const columns = createNames();
  const keys = atlas.keys.map(({ check, moment, aspect, bins: own, column, band }) => [
    checks.place(check),
    moments.place(moment),
    aspects.place(aspect),
    bins.place(own.join('\n')),
    columns.place(String.fromCharCode(...column.map((bin) => bin + FIRST_CHARACTER))),
    ...(band === null ? [] : [band.low, band.high, band.dead]),
  ]);
  const counts = atlas.causes.map(() => 0);
  for (const cause of atlas.causeOf) counts[cause] = (counts[cause] ?? 0) + 1;
  const file: AtlasFile = {
    format: FORMAT,
    plant: atlas.plant,
    fingerprint: atlas.fingerprint,
    faults: atlas.causes.map(({ fault }) => fault),
    priors: atlas.causes.map(({ priorWeight }) => priorWeight),
    particles: counts,
    severities: atlas.severities.map(toFiveDigits),
    reachedS: atlas.reachedS,
    checks: checks.all,
    moments: moments.all,
    aspects: aspects.all,
    bins: bins.all.map((own) => own.split('\n')),
    columns: columns.all,
    keys,
  };
  return JSON.stringify(file);
}

/** @returns null where the text is no atlas of this format */
export function decodeAtlas(text: string): Atlas | null {
  const file = parse(text);
  if (file === null) return null;
  const columns = file.columns.map((text) => {
    const column = new Uint8Array(text.length);
    for (let p = 0; p < column.length; p++) column[p] = text.charCodeAt(p) - FIRST_CHARACTER;
    return column;
  });
  const keys = file.keys.map((key): AtlasKey => {
    const [check = 0, moment = 0, aspect = 0, bins = 0, column = 0, ...ends] = key;
    return {
      check: file.checks[check] ?? '',
      moment: file.moments[moment] ?? '',
      aspect: file.aspects[aspect] ?? '',
      bins: file.bins[bins] ?? [],
      column: columns[column] ?? new Uint8Array(0),
      band: bandOfEnds(ends),
    };
  });
  return {
    plant: file.plant,
    fingerprint: file.fingerprint,
    causes: file.faults.map((fault, i) => ({ fault, priorWeight: file.priors[i] ?? 0 })),
    causeOf: Uint16Array.from(file.particles.flatMap((count, i) => Array<number>(count).fill(i))),
    keys,
    severities: file.severities,
    reachedS: file.reachedS,
  };
}

function parse(text: string): AtlasFile | null {
  try {
    const file = JSON.parse(text) as Partial<AtlasFile> | null;
    return file?.format === FORMAT ? (file as AtlasFile) : null;
  } catch {
    return null;
  }
}

function bandOfEnds(ends: readonly number[]): Band | null {
  const [low, high, dead] = ends;
  return low === undefined || high === undefined || dead === undefined ? null : { low, high, dead };
}

function createNames() {
  const places = new Map<string, number>();
  const all: string[] = [];
  return {
    all,
    place(name: string): number {
      const known = places.get(name);
      if (known !== undefined) return known;
      places.set(name, all.length);
      return all.push(name) - 1;
    },
  };
}

function toFiveDigits(value: number): number {
  return Number(value.toPrecision(5));
}
