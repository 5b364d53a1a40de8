import { arc, box, circle, onCircle, path, tag, text, turned } from './markup.ts';

/** Things that several drawings are put together from. */

/** A pipe through the picture, with flanges at its ends. */
export function pipe(y: number, bore: number): string {
  return [
    box('cu-metal', 0, y - bore / 2, 320, bore),
    path('cu-line', `M0 ${y - bore / 2}H320M0 ${y + bore / 2}H320`),
  ].join('');
}

export function screwHeads(places: readonly (readonly [number, number])[]): string {
  return places
    .map(
      ([x, y]) =>
        circle('cu-body', x, y, 6) + path('cu-thin', `M${x - 4} ${y - 3}L${x + 4} ${y + 3}`),
    )
    .join('');
}

/** Tick marks of a scale of degrees, and the angles written at some of them. */
export function degreeScale(
  cx: number,
  cy: number,
  r: number,
  fromDeg: number,
  spanDeg: number,
  written: readonly number[],
): string {
  const marks: string[] = [];
  for (let deg = 0; deg <= spanDeg; deg += 10) {
    const long = written.includes(deg);
    const at = fromDeg + deg;
    marks.push(
      path('cu-thin', `M${onCircle(cx, cy, r, at)}L${onCircle(cx, cy, r - (long ? 14 : 8), at)}`),
    );
    if (!long) continue;
    const [x, y] = onCircle(cx, cy, r + 16, at)
      .split(' ')
      .map(Number) as [number, number];
    marks.push(text(`${deg}°`, x, y + 5.5));
  }
  return path('cu-thin', arc(cx, cy, r, fromDeg, fromDeg + spanDeg)) + marks.join('');
}

/** A round bore with what has settled in it: dirt grows from the rim and in lumps. */
export function dirtyBore(cx: number, cy: number, r: number, closedShare: number): string {
  const open = r * Math.sqrt(Math.max(0, 1 - closedShare));
  const lumps: string[] = [];
  const count = Math.round(closedShare * 26);
  for (let i = 0; i < count; i += 1) {
    const deg = i * 137.5;
    const out = open + (r - open) * (0.15 + ((i * 0.37) % 0.6));
    const [x, y] = onCircle(cx, cy, Math.min(r - 5, out), deg)
      .split(' ')
      .map(Number) as [number, number];
    lumps.push(circle('cu-dirt', x, y, 5 + ((i * 3) % 6)));
  }
  return [
    circle('cu-metal', cx, cy, r + 16),
    circle('cu-line', cx, cy, r + 16),
    circle(closedShare > 0.04 ? 'cu-dirt' : 'cu-hole', cx, cy, r),
    closedShare > 0.04 ? irregular('cu-hole', cx, cy, open) : '',
    ...lumps,
    circle('cu-line', cx, cy, r),
  ].join('');
}

/** A disc whose rim is ragged, the same each time. */
export function irregular(shape: string, cx: number, cy: number, r: number): string {
  const points = Array.from({ length: 24 }, (_none, i) => {
    const ragged = r * (1 + 0.13 * Math.sin(i * 2.4) + 0.08 * Math.sin(i * 5.1));
    return onCircle(cx, cy, Math.max(0, ragged), i * 15);
  });
  return path(shape, `M${points.join('L')}Z`);
}

/** An arrow round a shaft; with the clock or against it. */
export function turnArrow(cx: number, cy: number, r: number, clockwise: boolean): string {
  const [from, to] = clockwise ? [200, 340] : [340, 200];
  const tip = clockwise ? 340 : 200;
  const [x, y] = onCircle(cx, cy, r, tip).split(' ').map(Number) as [number, number];
  const way = clockwise ? 80 : 100;
  return (
    path('cu-arrow', arc(cx, cy, r, from, to)) +
    turned(
      way + (clockwise ? 0 : 0),
      x,
      y,
      path('cu-arrow-head', `M${x - 9} ${y - 9}L${x + 11} ${y}L${x - 9} ${y + 9}Z`),
    )
  );
}

/** What is turned by hand or motor, spun by the style sheet. */
export function spun(
  clockwise: boolean,
  cx: number,
  cy: number,
  ...children: readonly string[]
): string {
  return tag(
    'g',
    {
      class: `cu-spins${clockwise ? '' : ' is-backward'}`,
      style: `transform-origin:${cx}px ${cy}px`,
    },
    ...children,
  );
}
