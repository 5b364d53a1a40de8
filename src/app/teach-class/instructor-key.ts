/** By which classes are opened and the library is written. It goes when the tab is closed. */
const PLACE = 'flamewright.instructor-key';

/** Empty where none was given. */
export function readInstructorKey(): string {
  try {
    return sessionStorage.getItem(PLACE) ?? '';
  } catch {
    return '';
  }
}

export function keepInstructorKey(key: string): void {
  try {
    if (key === '') sessionStorage.removeItem(PLACE);
    else sessionStorage.setItem(PLACE, key);
  } catch {
    // A device that keeps nothing asks again.
  }
}

/** Headers of a request that needs it. */
export function withInstructorKey(): Readonly<Record<string, string>> {
  const key = readInstructorKey();
  return key === '' ? {} : { 'x-instructor-key': key };
}
