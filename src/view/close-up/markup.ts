/** SVG as text, so that a drawing is plain data: tests read it without a page. */
export type Attributes = Readonly<Record<string, string | number>>;

export const WIDTH = 320;
export const HEIGHT = 220;

export function tag(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? short(value) : escaped(value)}"`)
    .join('');
  return children.length === 0
    ? `<${name}${written}/>`
    : `<${name}${written}>${children.join('')}</${name}>`;
}

export function path(shape: string, d: string, more: Attributes = {}): string {
  return tag('path', { class: shape, d, ...more });
}

export function circle(shape: string, cx: number, cy: number, r: number): string {
  return tag('circle', { class: shape, cx, cy, r });
}

export function box(
  shape: string,
  x: number,
  y: number,
  width: number,
  height: number,
  rx = 0,
): string {
  return tag('rect', { class: shape, x, y, width, height, rx });
}

export function text(content: string, x: number, y: number, anchor = 'middle', shape = ''): string {
  const kind = shape === '' ? {} : { class: shape };
  return tag('text', { x, y, 'text-anchor': anchor, ...kind }, escaped(content));
}

export function group(shape: string, transform: string, ...children: readonly string[]): string {
  const at = transform === '' ? {} : { transform };
  return tag('g', { ...(shape === '' ? {} : { class: shape }), ...at }, ...children, '');
}

/** Turned about a point, clockwise. */
export function turned(
  deg: number,
  cx: number,
  cy: number,
  ...children: readonly string[]
): string {
  return group('', `rotate(${short(deg)} ${short(cx)} ${short(cy)})`, ...children);
}

/** A point on a circle; 0° at three o'clock, clockwise. */
export function onCircle(cx: number, cy: number, r: number, deg: number): string {
  const turn = (deg * Math.PI) / 180;
  return `${short(cx + r * Math.cos(turn))} ${short(cy + r * Math.sin(turn))}`;
}

export function arc(cx: number, cy: number, r: number, fromDeg: number, toDeg: number): string {
  const large = Math.abs(toDeg - fromDeg) > 180 ? 1 : 0;
  const sweep = toDeg > fromDeg ? 1 : 0;
  return `M${onCircle(cx, cy, r, fromDeg)}A${r} ${r} 0 ${large} ${sweep} ${onCircle(cx, cy, r, toDeg)}`;
}

function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function escaped(value: string): string {
  return value.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');
}
