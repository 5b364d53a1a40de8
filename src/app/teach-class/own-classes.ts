/** The classes that were opened on this device, with what lets in again after a reload or a crash. */
import { z } from 'zod';
import { CLASS_KINDS, CLASS_WAYS } from '../../../machines/class/index.ts';

const PLACE = 'flamewright.classes';
/** Older ones go; their results stay on the server as long as it keeps them. */
const MOST_KEPT = 50;

const ownClassSchema = z.object({
  id: z.string(),
  code: z.string(),
  secret: z.string(),
  projectorKey: z.string(),
  title: z.string(),
  kind: z.enum(CLASS_KINDS),
  way: z.enum(CLASS_WAYS),
  openedMs: z.number(),
});
export type OwnClass = z.infer<typeof ownClassSchema>;

/** Of this visit, where the device keeps nothing. */
let unkept: readonly OwnClass[] = [];

/** The latest first; what cannot be read is left out, and stays where it is. */
export function ownClasses(): readonly OwnClass[] {
  const kept = everything().flatMap((one) => {
    const read = ownClassSchema.safeParse(one);
    return read.success ? [read.data] : [];
  });
  return [...unkept, ...kept];
}

export function ownClass(id: string): OwnClass | null {
  return ownClasses().find((one) => one.id === id) ?? null;
}

/** @returns whether the device will know it again */
export function keepOwnClass(own: OwnClass): boolean {
  const others = everything().filter((one) => idOf(one) !== own.id);
  const kept = write([own, ...others].slice(0, MOST_KEPT));
  if (!kept) unkept = [own, ...unkept];
  return kept;
}

export function forgetOwnClass(id: string): void {
  unkept = unkept.filter((one) => one.id !== id);
  write(everything().filter((one) => idOf(one) !== id));
}

function everything(): readonly unknown[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(PLACE) ?? '[]');
    return Array.isArray(kept) ? kept : [];
  } catch {
    return [];
  }
}

function write(all: readonly unknown[]): boolean {
  try {
    localStorage.setItem(PLACE, JSON.stringify(all));
    return true;
  } catch {
    return false;
  }
}

function idOf(one: unknown): unknown {
  return typeof one === 'object' && one !== null && 'id' in one ? one.id : undefined;
}
