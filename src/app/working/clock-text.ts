/** Simulated time as a clock shows it: '07.3 s', '1 min 07.3 s', '1 h 02 min 07 s'. */
export function clockText(tS: number): string {
  const tenths = Math.floor(tS * 10 + 1e-6);
  const hours = Math.floor(tenths / 36000);
  const minutes = Math.floor(tenths / 600) % 60;
  const seconds = (tenths % 600) / 10;
  if (hours > 0) return `${hours} h ${two(minutes)} min ${two(Math.floor(seconds))} s`;
  const tail = `${seconds.toFixed(1).padStart(4, '0')} s`;
  return minutes > 0 ? `${minutes} min ${tail}` : tail;
}

/** The same for a list: '1:07.3'. */
export function shortClock(tS: number): string {
  const tenths = Math.floor(tS * 10 + 1e-6);
  return `${Math.floor(tenths / 600)}:${((tenths % 600) / 10).toFixed(1).padStart(4, '0')}`;
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
