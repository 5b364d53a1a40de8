import { arc, box, circle, onCircle, path, tag, text, turned } from './markup.ts';
import { degreeScale, pipe, screwHeads, spun, turnArrow } from './parts.ts';
import { numberOf, says, shareOf } from './read.ts';
import type { Drawer } from './types.ts';

/** The blade in its duct, told by the slot in the end of its shaft. */
export const drawBlade: Drawer = ({ reading }) => {
  const deg = numberOf(reading, 'bladeDeg');
  return [
    box('cu-metal', 0, 52, 320, 150),
    path('cu-line', 'M0 52H320M0 202H320'),
    degreeScale(160, 127, 88, -90, 90, [0, 30, 60, 90]),
    circle('cu-body', 160, 127, 66),
    circle('cu-line', 160, 127, 66),
    turned(90 + deg, 160, 127, box('cu-blade', 92, 119, 136, 16, 8)),
    circle('cu-body', 160, 127, 20),
    circle('cu-line', 160, 127, 20),
    turned(90 + deg, 160, 127, box('cu-slot', 144, 123, 32, 8, 2)),
  ].join('');
};

/** The pointer on the servo's own shaft; the blade is not seen from here. */
export const drawPointer: Drawer = ({ reading, message }) => {
  const deg = numberOf(reading, 'pointerDeg');
  const moves = says(reading, 'pointer.turning');
  const held = says(reading, 'pointer.held-by-hand');
  return [
    box('cu-body', 40, 6, 240, 208, 14),
    path('cu-line', 'M54 6H266Q280 6 280 20V200Q280 214 266 214H54Q40 214 40 200V20Q40 6 54 6Z'),
    screwHeads([
      [56, 22],
      [264, 22],
      [56, 198],
      [264, 198],
    ]),
    degreeScale(160, 140, 84, -180, 90, [0, 30, 60, 90]),
    turned(deg - 180, 160, 140, path('cu-pointer', 'M150 130L236 140L150 150Z')),
    circle('cu-metal', 160, 140, 16),
    circle('cu-line', 160, 140, 16),
    moves ? turnArrow(160, 140, 40, true) : '',
    held ? text(message('close-up.by-hand'), 160, 204) : '',
  ].join('');
};

/** The roller of the purge end switch on the cam of the shaft. */
export const drawEndSwitch: Drawer = ({ reading, message }) => {
  const pressed = says(reading, 'end-switch.pressed');
  const turn = pressed ? 0 : 46;
  return [
    turned(
      turn,
      120,
      116,
      path('cu-metal', 'M120 46A70 70 0 1 0 190 116L172 104A16 16 0 0 1 164 92Q160 50 120 46Z'),
      path('cu-line', 'M120 46A70 70 0 1 0 190 116L172 104A16 16 0 0 1 164 92Q160 50 120 46Z'),
      path('cu-line', `M${onCircle(120, 116, 70, 0)}L206 116`),
      box('cu-handle', 178, 102, 24, 28, 4),
    ),
    circle('cu-body', 120, 116, 20),
    circle('cu-line', 120, 116, 20),
    box('cu-body', 244, 66, 60, 100, 6),
    path('cu-line', 'M244 66H304V166H244Z'),
    path('cu-lever', pressed ? 'M256 78L216 112' : 'M256 78L204 128'),
    circle('cu-metal', pressed ? 214 : 202, pressed ? 116 : 132, 11),
    circle('cu-line', pressed ? 214 : 202, pressed ? 116 : 132, 11),
    text(message(pressed ? 'close-up.pressed' : 'close-up.free'), 274, 190),
  ].join('');
};

/** What the converter's own display says. */
export const drawDisplay: Drawer = ({ reading, message }) => {
  const dark = says(reading, 'drive.dark');
  const limit = says(reading, 'drive.at-limit');
  const state = dark
    ? ''
    : message(
        says(reading, 'drive.ready')
          ? 'close-up.drive.ready'
          : limit
            ? 'close-up.drive.limit'
            : 'close-up.drive.runs',
      );
  const line = (value: string, unit: string, y: number): string =>
    dark ? '' : text(value, 202, y, 'end', 'cu-digits') + text(unit, 212, y, 'start', 'cu-unit');
  return [
    box('cu-body', 40, 8, 240, 204, 12),
    path('cu-line', 'M52 8H268Q280 8 280 20V200Q280 212 268 212H52Q40 212 40 200V20Q40 8 52 8Z'),
    box(dark ? 'cu-screen is-dark' : 'cu-screen', 64, 30, 192, 124, 6),
    line(numberOf(reading, 'frequencyHz').toFixed(1), 'Hz', 76),
    line(numberOf(reading, 'currentA').toFixed(1), 'A', 114),
    text(state, 160, 144, 'middle', limit ? 'cu-on-screen is-limit' : 'cu-on-screen'),
    ...[92, 160, 228].map((x) => circle('cu-metal', x, 183, 13) + circle('cu-line', x, 183, 13)),
    path('cu-thin', 'M86 183H98M160 177V189M222 177L234 183L222 189Z'),
  ].join('');
};

/** Two pulleys and a belt that is tight, hangs, or jumps. */
export const drawBelt: Drawer = ({ reading }) => {
  const slack = shareOf(reading, 'slackShare');
  const jumps = says(reading, 'belt.jumps');
  const sag = 6 + 150 * Math.min(0.4, slack);
  const run = (y: number, way: number): string =>
    `M76 ${110 + y}Q160 ${110 + y + way * sag} 250 ${110 + y * 0.6}`;
  return [
    path('cu-belt', `${run(-50, 1)}${run(50, 1)}`),
    jumps ? path('cu-belt is-ghost', `${run(-50, 1.8)}${run(50, 0.1)}`) : '',
    path('cu-belt', `${arc(76, 110, 50, 90, 270)}${arc(250, 110, 30, -90, 90)}`),
    circle('cu-metal', 76, 110, 46),
    circle('cu-line', 76, 110, 46),
    circle('cu-metal', 250, 110, 27),
    circle('cu-line', 250, 110, 27),
    path('cu-thin', 'M76 64V156M30 110H122M250 83V137M223 110H277'),
    circle('cu-body', 76, 110, 13),
    circle('cu-line', 76, 110, 13),
    circle('cu-body', 250, 110, 10),
    circle('cu-line', 250, 110, 10),
    slack >= 0.1 ? path('cu-dust', 'M120 196h6M136 200h5M154 197h8M176 201h5M196 198h6') : '',
  ].join('');
};

/** The fan's wheel through the inlet, against the arrow cast into its casing. */
export const drawRotation: Drawer = ({ reading, message }) => {
  const still = says(reading, 'fan.still');
  const right = says(reading, 'fan.turns-right');
  const [x, y] = [160, 132];
  const blades = Array.from({ length: 8 }, (_none, i) =>
    turned(i * 45, x, y, path('cu-blade-edge', 'M160 116C172 100 192 94 206 98')),
  );
  const wheel = [circle('cu-metal', x, y, 20), circle('cu-line', x, y, 20), ...blades];
  return [
    circle('cu-body', x, y, 84),
    circle('cu-line', x, y, 84),
    circle('cu-dark is-soft', x, y, 62),
    still ? wheel.join('') : spun(right, x, y, ...wheel),
    still ? '' : turnArrow(x, y, 73, right),
    path('cu-cast', arc(x, y, 104, 225, 312)),
    turned(225 + 87, x, y, path('cu-cast-head', 'M255 124L264 148L273 124Z')),
    text(message('close-up.cast-arrow'), 8, 24, 'start'),
    path('cu-thin', 'M58 32L82 54'),
  ].join('');
};

/** The contactor through its window: its bridge, and what arcs have left. */
export const drawContactor: Drawer = ({ reading, message }) => {
  const isIn = says(reading, 'contactor.in');
  const burnt = says(reading, 'contactor.burnt');
  const y = isIn ? 122 : 92;
  return [
    box('cu-body', 50, 10, 220, 200, 10),
    path(
      'cu-line',
      'M60 10H260Q270 10 270 20V200Q270 210 260 210H60Q50 210 50 200V20Q50 10 60 10Z',
    ),
    box('cu-dark is-soft', 70, 60, 180, 104, 6),
    ...[0, 1, 2].map((i) => {
      const x = 84 + i * 56;
      return [
        box('cu-metal', x, 132, 14, 26, 2),
        box('cu-metal', x + 28, 132, 14, 26, 2),
        box('cu-disc', x - 2, y, 46, 10, 3),
        burnt ? circle('cu-burnt', x + 7, 134, 7) + circle('cu-burnt', x + 35, 134, 6) : '',
      ].join('');
    }),
    box('cu-handle', 110, y - 38, 100, 26, 5),
    text(message(isIn ? 'close-up.pulled-in' : 'close-up.dropped-out'), 160, 192),
  ].join('');
};

/** The tube of the air switch on its nipple, or off it; water stands in a low loop. */
export const drawTube: Drawer = ({ reading }) => {
  const off = says(reading, 'tube.off');
  const water = says(reading, 'tube.water');
  const way = off
    ? 'M30 46C80 40 96 150 150 176S214 190 226 172'
    : 'M30 46C80 40 92 170 146 172S214 150 236 112';
  return [
    box('cu-body', 4, 14, 60, 64, 8),
    path('cu-line', 'M4 14H64V78H4Z'),
    box('cu-metal', 222, 60, 98, 40, 2),
    path('cu-line', 'M222 60H320M222 100H320'),
    box('cu-metal', 232, 96, 12, 26, 2),
    path('cu-line', 'M232 100V122H244V100'),
    path('cu-hose', way),
    path('cu-hose-inside', way),
    water
      ? path('cu-water-bead', off ? 'M120 160Q150 180 176 182' : 'M104 152Q136 178 170 168')
      : '',
    off ? path('cu-puff', 'M250 132q6 -6 0 -12M260 134q8 -8 0 -16') : '',
  ].join('');
};

/** Bars of a louvre or screen, closed by leaves, lint or a board. */
export const drawScreen: Drawer = ({ reading }) => {
  const closed = shareOf(reading, 'closedShare');
  const wide = 260 * closed;
  const leaves = Array.from({ length: Math.round(closed * 34) }, (_none, i) =>
    tag('ellipse', {
      class: 'cu-dirt',
      cx: 36 + ((i * 61) % Math.max(20, wide)),
      cy: 30 + ((i * 43) % 160),
      rx: 12,
      ry: 7,
      transform: `rotate(${(i * 47) % 180} ${36 + ((i * 61) % Math.max(20, wide))} ${30 + ((i * 43) % 160)})`,
    }),
  );
  const bars = Array.from({ length: 8 }, (_none, i) => `M30 ${28 + i * 23}H290`);
  return [
    box('cu-dark is-soft', 26, 14, 268, 192, 6),
    closed > 0.04 ? box('cu-dirt is-soft', 30, 18, wide, 184, 8) : '',
    ...leaves,
    path('cu-bars', bars.join('')),
    path('cu-line', 'M26 14H294V206H26Z'),
  ].join('');
};

export const drawPump: Drawer = ({ reading }) => {
  const turns = says(reading, 'pump.turns');
  const wheel = [
    circle('cu-metal', 160, 104, 34),
    circle('cu-line', 160, 104, 34),
    path('cu-thin', 'M160 70V138M126 104H194'),
    circle('cu-ink', 160, 82, 5),
  ];
  return [
    pipe(176, 40),
    circle('cu-body', 160, 104, 74),
    circle('cu-line', 160, 104, 74),
    turns ? spun(true, 160, 104, ...wheel) : wheel.join(''),
    turns ? turnArrow(160, 104, 54, true) : '',
  ].join('');
};
