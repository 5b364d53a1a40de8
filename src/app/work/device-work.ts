/** The saved work of this device, for the pages that list, save, bring in and erase it. */
import { eraseKept, exportKept, type Imported, importKept, listKept } from './keep-work.ts';
import { deviceShelf } from './shelf.ts';
import type { WorkName } from './work-record.ts';
import type { WorkList } from './work-types.ts';

export function listWork(): WorkList {
  return listKept(deviceShelf, nowISO());
}

/** The text of a file with everything that is kept. */
export function exportWork(): string {
  return exportKept(deviceShelf, nowISO());
}

export function importWork(text: string): Imported {
  return importKept(deviceShelf, text, nowISO());
}

export function eraseWork(what: WorkName | { readonly key: string } | 'all'): void {
  eraseKept(deviceShelf, what);
}

function nowISO(): string {
  return new Date().toISOString();
}
