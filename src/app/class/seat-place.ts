/** The seats that this device has in classes: what brings it back in after a reload. */
import { z } from 'zod';
import { CODE_LENGTH, MOST_SEATS, PIN_LENGTH } from '../../classroom/index.ts';
import type { Shelf } from '../work/shelf.ts';

/** Without it the schemas would compile themselves with `eval`, which the page's own rules refuse. */
z.config({ jitless: true });

const PREFIX = 'flamewright.class-seat.';
const VERSION = 1;

const placeSchema = z.strictObject({
  v: z.literal(VERSION),
  class: z.string().min(8).max(64),
  code: z.string().length(CODE_LENGTH),
  seat: z.number().int().min(1).max(MOST_SEATS),
  token: z.string().min(16).max(128),
  pin: z.string().regex(new RegExp(`^\\d{${PIN_LENGTH}}$`)),
  nickname: z.string().max(200),
  joinedISO: z.iso.datetime(),
  /** The PIN has been read; it is shown again when asked for. */
  pinRead: z.boolean(),
});
export type SeatPlace = Omit<z.infer<typeof placeSchema>, 'v'>;

/** What a device that keeps nothing would not take: it lasts as long as the page. */
const unkept = new Map<string, SeatPlace>();

/** Null where this device has no seat in that class, or none that can be read. */
export function readPlace(shelf: Shelf, code: string): SeatPlace | null {
  const text = shelf.get(PREFIX + code);
  if (text === null) return unkept.get(code) ?? null;
  try {
    const read = placeSchema.safeParse(JSON.parse(text));
    if (!read.success || read.data.code !== code) return null;
    const { v: _, ...place } = read.data;
    return place;
  } catch {
    return null;
  }
}

/** @returns whether it will still be there after a reload */
export function keepPlace(shelf: Shelf, place: SeatPlace): boolean {
  try {
    shelf.set(PREFIX + place.code, JSON.stringify({ v: VERSION, ...place }));
    unkept.delete(place.code);
    return true;
  } catch {
    unkept.set(place.code, place);
    return false;
  }
}

export function forgetPlace(shelf: Shelf, code: string): void {
  unkept.delete(code);
  shelf.remove(PREFIX + code);
}

/** The one taken last first. */
export function listPlaces(shelf: Shelf): readonly SeatPlace[] {
  const codes = shelf
    .keys()
    .filter((key) => key.startsWith(PREFIX))
    .map((key) => key.slice(PREFIX.length));
  return [...new Set([...codes, ...unkept.keys()])]
    .flatMap((code) => readPlace(shelf, code) ?? [])
    .sort((a, b) => b.joinedISO.localeCompare(a.joinedISO));
}
