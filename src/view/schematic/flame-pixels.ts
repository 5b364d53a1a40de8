/** A painted flame lying on its side, foot at the left, as RGBA pixels. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray<ArrayBuffer>;
}
export type FlamePart = 'body' | 'foot';

type Colour = readonly [number, number, number];
/** Natural gas with good air burns blue where it meets the air, amber in the body. */
const BLUE: Colour = [78, 132, 240];
const AMBER: Colour = [240, 138, 36];
const BRIGHT: Colour = [255, 205, 105];

const FOOT_HALF = 0.4;
const BELLY_AT = 0.34;

export function flamePixels(part: FlamePart, width: number, height: number): Pixels {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y += 1) {
    const across = Math.abs(((y + 0.5) / height) * 2 - 1);
    for (let x = 0; x < width; x += 1) {
      const along = (x + 0.5) / width;
      const at = (y * width + x) * 4;
      const [colour, alpha] = part === 'body' ? body(along, across) : foot(along, across);
      data[at] = colour[0];
      data[at + 1] = colour[1];
      data[at + 2] = colour[2];
      data[at + 3] = alpha * 255;
    }
  }
  return { width, height, data };
}

/** @param along 0 foot … 1 tip, @param across 0 axis … 1 edge of the picture */
function body(along: number, across: number): readonly [Colour, number] {
  const swell = FOOT_HALF + (0.94 - FOOT_HALF) * smooth(along / BELLY_AT);
  const taper = 1 - smooth((along - 0.3) / 0.7);
  const half = Math.max(0.02, swell * taper ** 0.8);
  const out = across / half;
  const edge = 1 - smooth((out - 0.35) / 0.65);
  const fade = 1 - smooth((along - 0.55) / 0.45);
  const rise = 0.25 + 0.75 * smooth(along / 0.3);
  const warm = mix(AMBER, BRIGHT, (1 - smooth(out / 0.8)) * (1 - along * 0.6));
  return [mix(BLUE, warm, smooth((along - 0.02) / 0.22)), edge * fade * rise * 0.8];
}

/** Burns along its rim: the middle, where the gas is still unmixed, is clear. */
function foot(along: number, across: number): readonly [Colour, number] {
  const half = FOOT_HALF + 0.5 * along;
  const out = across / half;
  const edge = 1 - smooth((out - 0.72) / 0.28);
  const rim = 0.3 + 0.7 * smooth((out - 0.2) / 0.6);
  return [BLUE, edge * rim * (1 - smooth(along)) * 0.85];
}

function smooth(value: number): number {
  const t = Math.min(1, Math.max(0, value));
  return t * t * (3 - 2 * t);
}

function mix(from: Colour, to: Colour, part: number): Colour {
  return [
    from[0] + (to[0] - from[0]) * part,
    from[1] + (to[1] - from[1]) * part,
    from[2] + (to[2] - from[2]) * part,
  ];
}
