/** A time span as SCORM 1.2 writes it, `HHHH:MM:SS.SS`; what is longer than that stays at its end. */
const MOST_HOURS = 9999;

export function sessionTime(seconds: number): string {
  const hundredths = Math.max(0, Math.round(seconds * 100));
  const hours = Math.floor(hundredths / 360_000);
  if (hours > MOST_HOURS) return '9999:59:59.99';
  const minutes = Math.floor(hundredths / 6000) % 60;
  const rest = ((hundredths % 6000) / 100).toFixed(2);
  return `${String(hours).padStart(4, '0')}:${String(minutes).padStart(2, '0')}:${rest.padStart(5, '0')}`;
}
