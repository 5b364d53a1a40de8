/** A quiz goes by when it was begun; in an address only digits stand. */
const PARTS = /^(\d{4})(\d{2})(\d{2})(\d{2})(\d{2})(\d{2})(\d{3})$/;

export function quizName(startedISO: string): string {
  return startedISO.replaceAll(/\D/g, '');
}

export function startedOf(name: string): string {
  return name.replace(PARTS, '$1-$2-$3T$4:$5:$6.$7Z');
}
