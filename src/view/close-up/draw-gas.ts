import { box, circle, group, path, tag, text, turned } from './markup.ts';
import { degreeScale, dirtyBore, pipe, screwHeads } from './parts.ts';
import { numberOf, says, shareOf } from './read.ts';
import type { Drawer } from './types.ts';

/** The window over a valve's stem: a disc that goes up as it opens. */
export const drawValveIndicator: Drawer = ({ reading, message }) => {
  const open = shareOf(reading, 'openShare');
  const y = 148 - 84 * open;
  return [
    pipe(196, 34),
    box('cu-body', 92, 20, 136, 158, 12),
    screwHeads([
      [106, 34],
      [214, 34],
      [106, 164],
      [214, 164],
    ]),
    box('cu-dark', 128, 40, 64, 126, 8),
    path('cu-scale', 'M132 148H150M132 127H142M132 106H146M132 85H142M132 64H150'),
    box('cu-stem', 164, y, 12, 160 - y, 0),
    box('cu-disc', 150, y - 9, 40, 18, 5),
    path('cu-line', 'M128 40H192V166H128Z'),
    text(message('close-up.open'), 84, 70, 'end'),
    text(message('close-up.shut'), 84, 154, 'end'),
    path('cu-thin', 'M88 64H126M88 148H126'),
  ].join('');
};

/** A small switch under the stem: its roller is pressed when the valve is home. */
export const drawProofSwitch: Drawer = ({ reading, message }) => {
  const pressed = says(reading, 'proof.pressed', 'end-switch.pressed');
  const point = shareOf(reading, 'switchPointShare');
  const stemY = pressed ? 96 : 52;
  return [
    box('cu-metal', 138, 0, 44, stemY, 4),
    path('cu-line', `M138 0V${stemY}H182V0`),
    box('cu-body', 92, 146, 136, 62, 8),
    path('cu-lever', pressed ? 'M104 146L160 112' : 'M104 146L160 88'),
    circle('cu-metal', 160, pressed ? 112 : 86, 16),
    circle('cu-line', 160, pressed ? 112 : 86, 16),
    circle('cu-lamp', 122, 178, 9),
    circle(pressed ? 'cu-ink' : 'cu-hole', 122, 178, 5),
    text(message(pressed ? 'close-up.pressed' : 'close-up.free'), 142, 183, 'start'),
    point > 0.04
      ? path(
          'cu-thin',
          `M236 ${146 - 60 * point}H262M244 ${138 - 60 * point}L236 ${146 - 60 * point}L244 ${154 - 60 * point}`,
        )
      : '',
  ].join('');
};

/** Handles lie along an open pipe and across a shut one. Every cock of the plant in a row. */
export const drawCocks: Drawer = ({ reading }) => {
  const cocks = Object.entries(reading.values);
  const wide = 320 / Math.max(1, cocks.length);
  return cocks
    .map(([id, open], i) =>
      group(
        '',
        `translate(${i * wide} 0)`,
        handle(wide / 2, 96, open, wide),
        text(id, wide / 2, 190),
      ),
    )
    .join('');
};

/** One handle on its plate: a damper in the stack, a feed valve. */
export const drawOpening: Drawer = ({ reading, message }) =>
  [
    handle(160, 104, shareOf(reading, 'openShare'), 320),
    text(message('close-up.open'), 214, 74, 'start'),
    text(message('close-up.shut'), 160, 50),
  ].join('');

function handle(x: number, y: number, open: number, wide: number): string {
  const half = Math.min(78, wide * 0.42);
  return [
    box('cu-metal', x - wide / 2, y - 22, wide, 44),
    path(
      'cu-line',
      `M${x - wide / 2} ${y - 22}H${x + wide / 2}M${x - wide / 2} ${y + 22}H${x + wide / 2}`,
    ),
    circle('cu-body', x, y, 34),
    circle('cu-line', x, y, 34),
    path('cu-thin', `M${x} ${y - 34}V${y - 44}M${x + 34} ${y}H${x + 44}`),
    turned(
      -90 * (1 - open),
      x,
      y,
      box('cu-handle', x - 16, y - 9, half + 16, 18, 9),
      path('cu-handle-mark', `M${x} ${y}H${x + half - 12}`),
    ),
    circle('cu-ink', x, y, 6),
  ].join('');
}

/** Into a bore, a basket, a louvre: how much of it is closed by what has settled there. */
export const drawWay: Drawer = ({ reading }) =>
  dirtyBore(160, 110, 82, shareOf(reading, 'closedShare'));

/** The strainer's basket, taken out: mesh, and dirt in it from below. */
export const drawStrainer: Drawer = ({ reading }) => {
  const closed = shareOf(reading, 'closedShare');
  const top = 190 - 150 * closed;
  const lumps = Array.from({ length: Math.round(closed * 46) }, (_none, i) =>
    circle(
      'cu-dirt',
      104 + ((i * 37) % 112),
      Math.min(186, top + ((i * 53) % Math.max(8, 190 - top))),
      4 + ((i * 5) % 8),
    ),
  );
  const mesh: string[] = [];
  for (let at = 0; at <= 10; at += 1) {
    mesh.push(`M${96 + at * 12.8} 34V190`, `M96 ${34 + at * 15.6}H224`);
  }
  return [
    box('cu-hole', 96, 34, 128, 156, 10),
    closed > 0.04 ? box('cu-dirt is-soft', 96, top, 128, 190 - top, 8) : '',
    ...lumps,
    path('cu-mesh', mesh.join('')),
    box('cu-metal', 80, 16, 160, 20, 5),
    path('cu-line', 'M80 16H240V36H80ZM96 36V180Q96 190 106 190H214Q224 190 224 180V36'),
  ].join('');
};

/** Leak spray on the joints of the train: foam grows where gas comes out. */
export const drawJoints: Drawer = ({ reading }) => {
  const sprayed = Object.entries(reading.values);
  const joints = sprayed.length > 0 ? sprayed : BARE_JOINTS;
  const step = 300 / Math.max(1, joints.length);
  return [
    pipe(92, 30),
    ...joints.map(([id, kgS], i) => {
      const x = 10 + step * (i + 0.5);
      return [
        box('cu-body', x - 7, 68, 14, 48, 3),
        path('cu-line', `M${x - 7} 68H${x + 7}V116H${x - 7}Z`),
        foam(x, kgS),
        group('', `translate(${x} 132) rotate(38)`, text(id, 0, 8, 'start')),
      ].join('');
    }),
  ].join('');
};

const BARE_JOINTS: readonly (readonly [string, number])[] = Array.from({ length: 5 }, () => [
  '',
  0,
]);

function foam(x: number, kgS: number): string {
  if (kgS <= FOAMS_KGS) return '';
  const grown = Math.min(1, Math.log10(kgS / FOAMS_KGS) / 4);
  return Array.from({ length: 6 + Math.round(18 * grown) }, (_none, i) => {
    const turn = i * 2.4;
    const out = (6 + 20 * grown) * Math.sqrt((i + 1) / 24);
    return circle(
      'cu-foam',
      x + out * Math.cos(turn),
      64 + out * Math.sin(turn) * 0.8,
      3 + ((i * 7) % 5),
    );
  }).join('');
}
const FOAMS_KGS = 1e-8;

/** The end of the valve's own shaft: its slot against the mark of its servo. */
export const drawShaft: Drawer = ({ reading, message }) => {
  const servo = numberOf(reading, 'servoShaftDeg');
  const blade = numberOf(reading, 'bladeDeg');
  return [
    degreeScale(160, 124, 84, -180, 90, [0, 30, 60, 90]),
    circle('cu-metal', 160, 124, 62),
    circle('cu-line', 160, 124, 62),
    turned(servo - 180, 160, 124, path('cu-pointer', 'M196 116L238 124L196 132Z')),
    circle('cu-body', 160, 124, 38),
    circle('cu-line', 160, 124, 38),
    turned(
      blade - 180,
      160,
      124,
      box('cu-slot', 126, 118, 68, 12, 3),
      circle('cu-ink', 188, 124, 4),
    ),
    text(message('close-up.servo'), 244, 190, 'start'),
    path('cu-pointer', 'M224 178L242 184L224 190Z'),
    text(message('close-up.shaft'), 244, 212, 'start'),
    box('cu-slot', 222, 201, 18, 8, 2),
  ].join('');
};

/** The vent hole of the regulator's cover. */
export const drawBreather: Drawer = ({ reading }) =>
  [
    tag('ellipse', { class: 'cu-metal', cx: 160, cy: 150, rx: 140, ry: 60 }),
    tag('ellipse', { class: 'cu-line', cx: 160, cy: 150, rx: 140, ry: 60 }),
    group(
      '',
      'translate(80 12) scale(0.5)',
      dirtyBore(160, 110, 82, shareOf(reading, 'closedShare')),
    ),
    path('cu-line', 'M124 118V138M196 118V138'),
  ].join('');
