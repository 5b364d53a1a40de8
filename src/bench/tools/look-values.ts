import { JOINED_BY, type LookReading, type LookWhat } from '../../engine/index.ts';
import type { Message } from '../message.ts';

type Values = LookReading['values'];

const PA_PER_BAR = 1e5;
const PSI_PER_BAR = 14.503774;
const MM_PER_INCH = 25.4;
/** Leak spray shows from here, kg/s. */
const FOAMS_KGS = 1e-8;

/** Numbers that say more than their word does, and how they are put. */
const NAMED: Readonly<Record<string, (value: number) => Message>> = {
  openShare: (share) => percent('open', share),
  closedShare: (share) => percent('closed', share),
  switchPointShare: (share) => percent('switch-point', share),
  slackShare: (share) => percent('slack', share),
  clearShare: (share) => percent('clear', share),
  offPlaceShare: (share) => percent('off-place', share),
  onFlameShare: (share) => percent('on-flame', share),
  shiftShare: (share) => percent('shifted', share),
  filmShare: (share) => percent('film', share),
  servoShaftDeg: (deg) => seen('servo-shaft', { deg }),
  bladeDeg: (deg) => seen('blade', { deg }),
  pointerDeg: (deg) => seen('pointer', { deg }),
  camDeg: (deg) => seen('cam', { deg }),
  frequencyHz: (hz) => seen('frequency', { hz: hz.toFixed(1) }),
  currentA: (amps) => seen('current', { amps: amps.toFixed(1) }),
  gapMm: (mm) => seen('gap', { mm }),
  shownHour: (hour) => seen('clock-shows', { time: clockTime(hour) }),
  dayHour: (hour) => seen('time-of-day', { time: clockTime(hour) }),
  levelM: (m) => seen(m < 0 ? 'level-below' : 'level-above', lengthOf(Math.abs(m))),
  pressurePa: (pa) => seen('gauge', pressureOf(pa)),
  temperatureC: (degC) => seen('gauge-temperature', { degC, degF: Math.round(1.8 * degC + 32) }),
};

/** Looks whose numbers go by the ids of the plant file. */
const BY_ID: Readonly<Partial<Record<LookWhat, (values: Values) => readonly Message[]>>> = {
  'manual cock': (values) =>
    Object.entries(values).map(([id, share]) =>
      seen('cock', { id, percent: Math.round(100 * share) }),
    ),
  'gas joints': (values) =>
    listed(
      'foam-at',
      idsWhere(values, (kgS) => kgS > FOAMS_KGS),
    ),
  'limit buttons': (values) =>
    listed(
      'tripped',
      idsWhere(values, (out) => out === 1),
    ),
  fuses: (values) =>
    listed(
      'broken-fuses',
      idsWhere(values, (whole) => whole === 0),
    ),
  'terminal strip': (values) =>
    Object.entries(values).map(([id, count]) => {
      const [from, to] = id.split(JOINED_BY);
      if (to === undefined) return seen('wire-out', terminalOf(id));
      return seen(count > 1 ? 'jumpers' : 'jumper', { from, to, count });
    }),
  'control relays': (values) => [
    ...listed(
      'relays-in',
      idsWhere(values, (made) => made === 1),
    ),
    ...listed(
      'relays-out',
      idsWhere(values, (made) => made === 0),
    ),
  ],
};

/** What an eye can put a number to, as sentences. */
export function lookValues({ what, values, words }: LookReading): readonly Message[] {
  const byId = BY_ID[what];
  if (byId !== undefined) return byId(values);
  const byHand = words.includes('look.panel.hand') ? values.handRateShare : undefined;
  return [
    ...(byHand === undefined ? [] : [percent('hand-rate', byHand)]),
    ...Object.entries(values).flatMap(([name, value]) => {
      const put = NAMED[name];
      return put === undefined ? [] : [put(value)];
    }),
  ];
}

function seen(code: string, params: NonNullable<Message['params']>): Message {
  return { code: `bench.seen.${code}`, params };
}

function percent(code: string, share: number): Message {
  return seen(code, { percent: Math.round(100 * share) });
}

function listed(code: string, ids: readonly string[]): readonly Message[] {
  return ids.length === 0 ? [] : [seen(code, { ids })];
}

function idsWhere(values: Values, holds: (value: number) => boolean): readonly string[] {
  return Object.entries(values).flatMap(([id, value]) => (holds(value) ? [id] : []));
}

/** `high-limit:1` is end 1 of the high limit. */
function terminalOf(id: string): { readonly device: string; readonly end: string } {
  const [device = '', end = ''] = id.split(/:(?=[12]$)/);
  return { device: device.replace(/[-.]/g, ' '), end };
}

function clockTime(hour: number): string {
  const minutes = Math.round(60 * hour) % 1440;
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

function lengthOf(m: number): { readonly mm: number; readonly inch: string } {
  return { mm: Math.round(1000 * m), inch: ((1000 * m) / MM_PER_INCH).toFixed(1) };
}

function pressureOf(pa: number): { readonly bar: string; readonly psi: number } {
  const bar = pa / PA_PER_BAR;
  return { bar: bar.toFixed(2), psi: Math.round(bar * PSI_PER_BAR) };
}
