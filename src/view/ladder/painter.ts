import type { LadderLayout, PlacedElement, Point } from './layout-types.ts';
import { svgNode as node, svgText as text } from './svg.ts';
import type { LadderSymbol, Shape } from './symbols.ts';

/** The drawn ladder: made once for a layout, then only what changed is marked anew. */
export interface DrawnLadder {
  readonly svg: SVGSVGElement;
  /** Under everything and over everything, for marks that come and go. */
  readonly below: SVGElement;
  readonly above: SVGElement;
  readonly wirePlaces: ReadonlyMap<string, readonly SVGElement[]>;
  setWire(wire: string, isLive: boolean): void;
  setElement(name: string, isMade: boolean): void;
  /** Mark the rows of these rungs. */
  markRungs(rungs: ReadonlySet<number>): void;
}

const FLAG_HALF_PX = 12;
const TERMINAL_DOWN_PX = 19;
const TERMINAL_OUT_PX = 4;

export function drawLadder(
  layout: LadderLayout,
  symbolOf: (element: string) => LadderSymbol,
  signals: ReadonlySet<string>,
  isMadeAtRest: (element: string) => boolean,
): DrawnLadder {
  const svg = node('svg', { class: 'ladder-drawing', 'aria-hidden': 'true' }) as SVGSVGElement;
  svg.setAttribute('viewBox', `0 0 ${layout.width} ${layout.height}`);
  const wires = new Map<string, SVGElement[]>();
  const elements = new Map<string, SVGElement>();
  const rows = new Map<number, SVGElement[]>();
  const ofWire = (wire: string, element: SVGElement): void => {
    wires.set(wire, [...(wires.get(wire) ?? []), element]);
    if (signals.has(wire)) element.classList.add('is-signal');
    svg.append(element);
  };

  for (const { rung, top, height } of layout.rows) {
    const band = node('g', { class: 'ladder-row' });
    band.append(
      node('rect', { class: 'ladder-wash', x: 0, y: top, width: layout.width, height }),
      node('rect', { class: 'ladder-bar', x: 2, y: top + 4, width: 6, height: height - 8 }),
    );
    rows.set(rung, [...(rows.get(rung) ?? []), band]);
    svg.append(band);
  }
  const below = node('g', { class: 'ladder-marks' });
  const above = node('g', { class: 'ladder-marks' });
  svg.append(below);
  for (const { wire, x, top, bottom } of layout.rails) {
    ofWire(wire, node('path', { class: 'ladder-wire ladder-rail', d: `M${x} ${top}V${bottom}` }));
  }
  for (const { wire, points } of layout.pieces) {
    ofWire(wire, node('path', { class: 'ladder-wire', d: pathOf(points) }));
  }
  for (const { wire, x, top } of layout.rails) {
    ofWire(wire, node('circle', { class: 'ladder-screw', cx: x, cy: top, r: 4 }));
  }
  for (const { wire, x, y } of layout.dots) {
    ofWire(wire, node('circle', { class: 'ladder-dot', cx: x, cy: y, r: 4.5 }));
  }
  for (const { wire, x, y, side, widthPx } of layout.flags) {
    const tip = side === 'from' ? -6 : 6;
    const inner = side === 'from' ? x + widthPx : x;
    const outer = side === 'from' ? x : x + widthPx;
    const d = `M${inner} ${y - FLAG_HALF_PX}H${outer}L${outer + tip} ${y}L${outer} ${y + FLAG_HALF_PX}H${inner}Z`;
    const flag = node('g', { class: 'ladder-flag' });
    flag.append(node('path', { d }), text(wire, x + widthPx / 2, y + 5.5, 'middle'));
    ofWire(wire, flag);
  }
  for (const { wire, x, y, anchor } of layout.names) {
    const name = text(wire, x, y, anchor);
    name.classList.add('ladder-wire-name');
    ofWire(wire, name);
  }
  for (const place of layout.elements) {
    const drawn = drawElement(place, symbolOf(place.name), isMadeAtRest(place.name));
    elements.set(place.name, drawn);
    svg.append(drawn);
  }
  svg.append(above);
  return {
    svg,
    below,
    above,
    wirePlaces: wires,
    setWire(wire, isLive) {
      for (const each of wires.get(wire) ?? []) each.classList.toggle('is-live', isLive);
    },
    setElement: (name, isMade) => elements.get(name)?.classList.toggle('is-made', isMade),
    markRungs(rungs) {
      for (const [rung, bands] of rows) {
        for (const band of bands) band.classList.toggle('is-of-step', rungs.has(rung));
      }
    },
  };
}

function drawElement(place: PlacedElement, symbol: LadderSymbol, madeAtRest: boolean): SVGElement {
  const group = node('g', { class: 'ladder-element' });
  const body = node('g', { transform: `translate(${place.x} ${place.y})` });
  for (const [part, shapes] of [
    ['always', symbol.always],
    ['made', symbol.made],
    ['open', symbol.open],
    ['paper', symbol.paper ?? (madeAtRest ? symbol.made : symbol.open)],
  ] as const) {
    const layer = node('g', { class: `ladder-${part}` });
    layer.append(...shapes.map(drawShape));
    body.append(layer);
  }
  group.append(body);
  place.terminals.forEach(({ x, y }, i) => {
    const outward = i === 0 ? -TERMINAL_OUT_PX : TERMINAL_OUT_PX;
    const terminal = text(String(i + 1), x + outward, y + TERMINAL_DOWN_PX, 'middle');
    terminal.classList.add('ladder-terminal');
    group.append(node('circle', { class: 'ladder-screw', cx: x, cy: y, r: 2.6 }), terminal);
  });
  place.lines.forEach((line, i) => {
    group.append(text(line, place.x, place.linesTopY + i * LINE_PX, 'middle'));
  });
  return group;
}
const LINE_PX = 19;

function drawShape(shape: Shape): SVGElement {
  if ('text' in shape) {
    const letters = text(shape.text, shape.x, shape.y, 'middle');
    letters.classList.add('ladder-letter');
    if (shape.inverse === true) letters.classList.add('is-inverse');
    return letters;
  }
  const path = node('path', { class: 'ladder-shape', d: shape.d });
  if (shape.fill !== undefined) path.classList.add(`fill-${shape.fill}`);
  if (shape.dashed === true) path.classList.add('is-dashed');
  return path;
}

function pathOf(points: readonly Point[]): string {
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}
