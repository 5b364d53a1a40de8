import { box, circle, group, onCircle, path, tag, text, turned } from './markup.ts';
import { pipe } from './parts.ts';
import { numberOf, says, shareOf } from './read.ts';
import type { Drawer } from './types.ts';

/** What a glass shows from its middle, m. */
const HALF_GLASS_M = 0.3;
const PA_PER_BAR = 1e5;

/** The gauge glass with its cocks: a cock that lies across is shut, and the glass no longer tells. */
export const drawGlass: Drawer = ({ reading, message }) => {
  const shut = says(reading, 'glass.cock-shut');
  const level = numberOf(reading, 'levelM') / HALF_GLASS_M;
  const share = says(reading, 'glass.empty')
    ? 0
    : says(reading, 'glass.full')
      ? 1
      : Math.min(0.98, Math.max(0.02, 0.5 + 0.5 * level));
  const top = 182 - 144 * share;
  const cock = (y: number, isShut: boolean): string =>
    [
      box('cu-metal', 40, y - 10, 110, 20, 3),
      path('cu-line', `M40 ${y - 10}H150M40 ${y + 10}H150`),
      circle('cu-body', 92, y, 16),
      circle('cu-line', 92, y, 16),
      turned(isShut ? 90 : 0, 92, y, box('cu-handle', 88, y - 5, 50, 10, 5)),
    ].join('');
  return [
    box('cu-metal', 0, 0, 44, 220),
    path('cu-line', 'M44 0V220'),
    cock(26, shut),
    cock(194, shut),
    box('cu-glass-tube', 150, 30, 30, 160, 6),
    share > 0 ? box('cu-water', 152, top, 26, 186 - top, 3) : '',
    share > 0 && share < 1 ? path('cu-meniscus', `M152 ${top}Q165 ${top + 6} 178 ${top}`) : '',
    path(
      'cu-line',
      'M150 36V184Q150 190 156 190H174Q180 190 180 184V36Q180 30 174 30H156Q150 30 150 36Z',
    ),
    path('cu-thin', 'M188 38H200M188 74H196M188 110H206M188 146H196M188 182H200'),
    text('0', 214, 115.5, 'start'),
    text('+', 212, 44, 'start'),
    text('−', 212, 188, 'start'),
    shut ? text(message('close-up.cock-shut'), 236, 66, 'start') : '',
  ].join('');
};

/** The dial on the vessel itself; its range is the next of the usual ones. */
export const drawGauge: Drawer = ({ reading, message }) => {
  const bar = Math.max(0, numberOf(reading, 'pressurePa') / PA_PER_BAR);
  const full = [4, 10, 16, 25].find((range) => bar <= range * 0.9) ?? 40;
  const marks = Array.from({ length: 21 }, (_none, i) => {
    const deg = 135 + (270 * i) / 20;
    return `M${onCircle(160, 116, 92, deg)}L${onCircle(160, 116, i % 5 === 0 ? 76 : 84, deg)}`;
  });
  const numbers = [0, 1, 2, 3, 4].map((i) => {
    const [x, y] = onCircle(160, 116, 60, 135 + 67.5 * i)
      .split(' ')
      .map(Number) as [number, number];
    return text(String((full * i) / 4), x, y + 5.5);
  });
  return [
    circle('cu-metal', 160, 116, 104),
    circle('cu-line', 160, 116, 104),
    circle('cu-dial', 160, 116, 96),
    path('cu-thin', marks.join('')),
    ...numbers,
    text(message('close-up.bar'), 160, 172),
    turned(
      135 + 270 * Math.min(1, bar / full),
      160,
      116,
      path('cu-needle', 'M142 112L238 116L142 120Z'),
    ),
    circle('cu-ink', 160, 116, 8),
  ].join('');
};

/** Buttons of the limits that latch: the one that tripped stands out. */
export const drawLimits: Drawer = ({ reading, message }) =>
  rows(
    reading.values,
    (on, y) =>
      [
        box('cu-metal', 24, y - 16, 46, 32, 4),
        path('cu-line', `M24 ${y - 16}H70V${y + 16}H24Z`),
        box(on ? 'cu-button is-out' : 'cu-button', 70, y - 9, on ? 26 : 8, 18, 3),
        text(message(on ? 'close-up.tripped' : 'close-up.in'), 300, y + 5.5, 'end'),
      ].join(''),
    108,
  );

/** Fuses side by side: a wire that is whole, or one that has melted away. */
export const drawFuses: Drawer = ({ reading, message }) =>
  rows(
    reading.values,
    (whole, y) =>
      [
        box('cu-glass-tube', 34, y - 13, 76, 26, 3),
        box('cu-metal', 16, y - 15, 22, 30, 3),
        box('cu-metal', 106, y - 15, 22, 30, 3),
        whole
          ? path('cu-fuse-wire', `M38 ${y}H106`)
          : path('cu-fuse-wire', `M38 ${y}Q48 ${y} 54 ${y + 6}M106 ${y}Q98 ${y} 92 ${y - 5}`) +
            tag('ellipse', { class: 'cu-soot-mark', cx: 73, cy: y + 1, rx: 17, ry: 9 }),
        path(
          'cu-line',
          `M16 ${y - 15}H38V${y + 15}H16ZM106 ${y - 15}H128V${y + 15}H106ZM38 ${y - 13}H106M38 ${y + 13}H106`,
        ),
        text(message(whole ? 'close-up.whole' : 'close-up.broken'), 306, y + 5.5, 'end'),
      ].join(''),
    140,
  );

/** Flags of the relays: up when pulled in. */
export const drawRelays: Drawer = ({ reading, message }) =>
  rows(
    reading.values,
    (made, y) =>
      [
        box('cu-body', 18, y - 11, 44, 22, 3),
        path('cu-line', `M18 ${y - 11}H62V${y + 11}H18Z`),
        box(made ? 'cu-ink' : 'cu-hole', 24, y - 6, 14, 12, 2),
        text(message(made ? 'close-up.pulled-in' : 'close-up.dropped-out'), 308, y + 5.5, 'end'),
      ].join(''),
    74,
  );

/** One row for each of several of a kind, by their ids. */
function rows(
  values: Readonly<Record<string, number>>,
  draw: (on: boolean, y: number) => string,
  nameX: number,
): string {
  const all = Object.entries(values);
  const step = Math.min(52, 212 / Math.max(1, all.length));
  const scale = Math.min(1, step / 24);
  return all
    .map(([id, value], i) => {
      const y = 4 + step * (i + 0.5);
      const row = draw(value === 1, 0) + text(id, nameX, 5.5, 'start');
      return group('', `translate(${160 - 160 * scale} ${y}) scale(${scale})`, row);
    })
    .join('');
}

export const drawProbe: Drawer = ({ reading }) => {
  const film = shareOf(reading, 'filmShare');
  return [
    box('cu-body', 116, 4, 88, 44, 6),
    path('cu-line', 'M116 4H204V48H116Z'),
    box('cu-metal', 152, 48, 16, 166, 8),
    film > 0.04 ? box('cu-film', 152 - 10 * film, 74, 16 + 20 * film, 140, 10) : '',
    path('cu-line', 'M152 48V206Q152 214 160 214Q168 214 168 206V48'),
  ].join('');
};

/** The pipe behind the safety valve: dry, a wisp, or blowing. */
export const drawSafetyValve: Drawer = ({ reading }) => {
  const plume = shareOf(reading, 'plumeShare');
  const puffs = plume <= 0 ? 0 : 4 + Math.round(12 * plume);
  return [
    box('cu-metal', 80, 120, 80, 100, 6),
    path('cu-line', 'M80 220V126Q80 120 86 120H154Q160 120 160 126V220'),
    box('cu-metal', 156, 132, 84, 34, 2),
    path('cu-line', 'M160 132H240M160 166H240M240 126V172'),
    ...Array.from({ length: puffs }, (_none, i) =>
      circle(
        'cu-steam',
        252 + ((i * 29) % 22) + i * 2,
        118 - ((i * 23) % Math.round(20 + 90 * plume)),
        8 + ((i * 7) % 12) * (0.5 + plume),
      ),
    ),
  ].join('');
};

export const drawDrain: Drawer = ({ reading }) => {
  const runs = says(reading, 'drain.runs');
  return [
    pipe(60, 40),
    box('cu-metal', 142, 76, 36, 50, 3),
    path('cu-line', 'M142 80V126H178V80'),
    runs ? path('cu-stream', 'M152 126Q148 170 152 214H168Q172 170 168 126Z') : '',
    path('cu-line', 'M90 214H230'),
    runs ? path('cu-splash', 'M120 206q10 -10 16 0M184 206q8 -12 18 0') : '',
  ].join('');
};

/** The time clock's own hand beside the hour of the day. */
export const drawClock: Drawer = ({ reading, message }) => {
  const hand = (hour: number, shape: string, long: number): string =>
    turned(90 + hour * 15, 120, 110, path(shape, `M120 104L${120 + long} 110L120 116Z`));
  const marks = Array.from({ length: 24 }, (_none, i) => {
    const deg = i * 15 + 90;
    return `M${onCircle(120, 110, 92, deg)}L${onCircle(120, 110, i % 6 === 0 ? 78 : 86, deg)}`;
  });
  const made = says(reading, 'clock.made');
  return [
    circle('cu-dial', 120, 110, 98),
    circle('cu-line', 120, 110, 98),
    path('cu-thin', marks.join('')),
    text('12', 120, 50),
    text('18', 186, 115.5),
    text('24', 120, 181),
    text('6', 54, 115.5),
    hand(numberOf(reading, 'dayHour'), 'cu-day', 84),
    hand(numberOf(reading, 'shownHour'), 'cu-needle', 62),
    circle('cu-ink', 120, 110, 7),
    box('cu-body', 236, 84, 78, 52, 6),
    path('cu-line', 'M236 84H314V136H236Z'),
    path('cu-lever', made ? 'M248 110H302' : 'M248 110L298 92'),
    circle('cu-ink', 248, 110, 4),
    circle('cu-ink', 302, 110, 4),
    text(message(made ? 'close-up.closed' : 'close-up.opened'), 275, 160),
  ].join('');
};
