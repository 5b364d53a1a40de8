import { textWidth } from '../text-width.ts';
import type { Lead } from './leads.ts';
import { svgNode, svgText } from './svg.ts';
import type { Terminal } from './terminals.ts';

/** Down and outward, clear of the names over a device. */
const LEAN_DEG = { left: 118, right: 62 } as const;
const SECOND_LEAN_DEG = 26;
const TIP_PX = 7;
const HANDLE_PX = 34;
const HANDLE_HALF_PX = 8;
/** Wide enough for its letters even where it hangs straight down. */
const TAGGED_HALF_PX = 13;
const SIGNS: Readonly<Record<Lead, string>> = { from: '+', to: '−' };
const FONT_PX = 16;
const CHIP_PAD_PX = 8;
const CHIP_HIGH_PX = 28;
const CHIP_OVER_PX = 16;

/**
 * A probe with its tip on a terminal. Red and black are told by their signs as well.
 *
 * @param tag of another meter, before the sign
 */
export function drawProbe(
  lead: Lead,
  at: Pick<Terminal, 'x' | 'y' | 'side'>,
  tag = '',
): SVGElement {
  const turn = lead === 'to' ? (at.side === 'left' ? SECOND_LEAN_DEG : -SECOND_LEAN_DEG) : 0;
  const leanDeg = LEAN_DEG[at.side] - turn;
  const group = svgNode('g', {
    class: `ladder-probe is-${lead}${tag === '' ? '' : ' is-other'}`,
    'data-lead': lead,
    transform: `translate(${at.x} ${at.y})`,
  });
  const text = `${tag}${SIGNS[lead]}`;
  const longPx = HANDLE_PX + (tag === '' ? 0 : textWidth(tag, FONT_PX, 600));
  const halfPx = tag === '' ? HANDLE_HALF_PX : TAGGED_HALF_PX;
  const turned = svgNode('g', { transform: `rotate(${leanDeg})` });
  turned.append(
    svgNode('path', { class: 'ladder-probe-tip', d: `M0 0L${TIP_PX + 6} -3V3Z` }),
    svgNode('rect', {
      class: 'ladder-probe-handle',
      x: TIP_PX + 4,
      y: -halfPx,
      width: longPx,
      height: 2 * halfPx,
      rx: halfPx,
    }),
  );
  const middlePx = TIP_PX + 4 + longPx / 2;
  const angle = (leanDeg * Math.PI) / 180;
  const letters = svgText(
    text,
    Math.cos(angle) * middlePx,
    Math.sin(angle) * middlePx + 5.5,
    'middle',
  );
  letters.classList.add('ladder-probe-sign');
  group.append(turned, letters);
  return group;
}

/** A clamp round the wire at a terminal. */
export function drawClamp(at: Pick<Terminal, 'x' | 'y' | 'side'>, tag = ''): SVGElement {
  const group = svgNode('g', {
    class: `ladder-probe is-clamp${tag === '' ? '' : ' is-other'}`,
    'data-lead': 'from',
    transform: `translate(${at.x + (at.side === 'left' ? -14 : 14)} ${at.y})`,
  });
  const letters = svgText(tag === '' ? 'A' : tag, 0, 29, 'middle');
  letters.classList.add('ladder-probe-sign');
  group.append(
    svgNode('ellipse', { class: 'ladder-clamp-jaw', cx: 0, cy: 0, rx: 7, ry: 12 }),
    svgNode('rect', { class: 'ladder-probe-handle', x: -11, y: 12, width: 22, height: 22, rx: 5 }),
    letters,
  );
  return group;
}

/** A wire put across by hand, with a clip at either end. */
export function drawJumper(a: Terminal, b: Terminal, tag: string): SVGElement {
  const group = svgNode('g', { class: 'ladder-jumper' });
  const middle = { x: (a.x + b.x) / 2, y: Math.max(a.y, b.y) + 34 };
  group.append(
    svgNode('path', {
      class: 'ladder-jumper-wire',
      d: `M${a.x} ${a.y}Q${middle.x} ${middle.y + 10} ${b.x} ${b.y}`,
    }),
    ...[a, b].map(({ x, y }) =>
      svgNode('circle', { class: 'ladder-jumper-clip', cx: x, cy: y, r: 7 }),
    ),
  );
  const letters = svgText(tag, middle.x, (a.y + b.y) / 2 + 40, 'middle');
  letters.classList.add('ladder-jumper-tag');
  group.append(letters);
  return group;
}

/** A ring round a terminal, and its name over it. */
export function drawPointer(
  at: Terminal,
  label: string,
  drawingWidth: number,
  isCursor: boolean,
): SVGElement {
  const group = svgNode('g', { class: `ladder-pointer${isCursor ? ' is-cursor' : ''}` });
  const wide = textWidth(label, FONT_PX, 400) + 2 * CHIP_PAD_PX;
  const x = Math.max(4, Math.min(drawingWidth - wide - 4, at.x - wide / 2));
  const over = at.y - CHIP_OVER_PX - CHIP_HIGH_PX;
  const y = over < 2 ? at.y + CHIP_OVER_PX : over;
  group.append(
    svgNode('circle', { class: 'ladder-ring', cx: at.x, cy: at.y, r: 11 }),
    svgNode('rect', { class: 'ladder-chip', x, y, width: wide, height: CHIP_HIGH_PX, rx: 6 }),
    svgText(label, x + CHIP_PAD_PX, y + 19.5, 'start'),
  );
  return group;
}
