import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import type { TakenSample } from './worker.ts';

/** Samples of earlier builds, by what they depend on; a folder that may be thrown away at any time. */
export interface Keep {
  find(name: string): readonly TakenSample[] | null;
  put(name: string, samples: readonly TakenSample[]): void;
  /** Throws away what is not among these. */
  only(names: readonly string[]): void;
}

/** Little is gained by packing them harder. */
const LEVEL = 1;

/** @param empty throws away all that is there */
export function openKeep(folder: string, empty: boolean): Keep {
  if (empty) rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const fileOf = (name: string) => join(folder, `${name}.json.gz`);
  return {
    find(name) {
      if (!existsSync(fileOf(name))) return null;
      try {
        return unpack(gunzipSync(readFileSync(fileOf(name))).toString());
      } catch {
        // Half written, or of an older form: as good as none.
        return null;
      }
    },
    put: (name, samples) =>
      writeFileSync(fileOf(name), gzipSync(Buffer.from(pack(samples)), { level: LEVEL })),
    only(names) {
      const wanted = new Set(names.map((name) => `${name}.json.gz`));
      for (const file of readdirSync(folder)) {
        if (!wanted.has(file)) rmSync(join(folder, file));
      }
    },
  };
}

export function fingerprintOf(...texts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(text).update('\0');
  return hash.digest('hex').slice(0, 32);
}

export function pack(samples: readonly TakenSample[]): string {
  return JSON.stringify(samples.map(({ severity, readings }) => [severity, [...readings]]));
}

function unpack(text: string): readonly TakenSample[] {
  const all = JSON.parse(text) as readonly (readonly [number, [string, number | string][]])[];
  return all.map(([severity, readings]) => ({ severity, readings: new Map(readings) }));
}
