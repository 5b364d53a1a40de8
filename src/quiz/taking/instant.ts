/**
 * Instants as text and as a number. Below the view there is no calendar of the device: the days of a
 * date are counted by the rule of the Gregorian calendar, from a year that begins with March.
 */

export const DAY_MS = 86_400_000;

const TEXT = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.(\d+))?)?Z$/;
/** A period of the calendar: four hundred years. */
const ERA_DAYS = 146_097;
/** From 1 March of year 0 to 1 January 1970. */
const TO_EPOCH_DAYS = 719_468;

/** @param iso as in `2026-03-01T08:00:00.000Z` @returns ms since 1970; NaN where it is no such text */
export function msOfISO(iso: string): number {
  const found = TEXT.exec(iso);
  if (found === null) return Number.NaN;
  const [year, month, day, hour, minute, second] = found
    .slice(1, 7)
    .map((part) => Number(part ?? 0));
  const fraction = Number(`0.${found[7] ?? '0'}`);
  const days = daysOf(year as number, month as number, day as number);
  const seconds = ((hour as number) * 60 + (minute as number)) * 60 + (second as number);
  return days * DAY_MS + seconds * 1000 + Math.floor(fraction * 1000 + 1e-6);
}

/** @param ms since 1970, of the years 0 to 9999 */
export function isoOfMs(ms: number): string {
  const whole = Math.floor(ms);
  const days = Math.floor(whole / DAY_MS);
  const rest = whole - days * DAY_MS;
  const { year, month, day } = dateOf(days);
  const time = [Math.floor(rest / 3_600_000), Math.floor(rest / 60_000) % 60].map((n) => digits(n));
  const seconds = `${digits(Math.floor(rest / 1000) % 60)}.${digits(rest % 1000, 3)}`;
  return `${digits(year, 4)}-${digits(month)}-${digits(day)}T${time.join(':')}:${seconds}Z`;
}

function daysOf(year: number, month: number, day: number): number {
  const marchYear = month > 2 ? year : year - 1;
  const era = Math.floor(marchYear / 400);
  const ofEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfEra = ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + dayOfYear;
  return era * ERA_DAYS + dayOfEra - TO_EPOCH_DAYS;
}

function dateOf(days: number) {
  const sinceMarch = days + TO_EPOCH_DAYS;
  const era = Math.floor(sinceMarch / ERA_DAYS);
  const dayOfEra = sinceMarch - era * ERA_DAYS;
  const leaps = Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524);
  const ofEra = Math.floor((dayOfEra - leaps + Math.floor(dayOfEra / (ERA_DAYS - 1))) / 365);
  const dayOfYear = dayOfEra - (ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return {
    year: ofEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1,
  };
}

function digits(value: number, least = 2): string {
  return String(value).padStart(least, '0');
}
