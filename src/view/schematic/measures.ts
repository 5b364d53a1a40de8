import type { Size } from './layout-types.ts';

/** Sizes everything else is set out from. */
export interface Measures {
  readonly size: Size;
  /** Symbols are drawn at this multiple of their drawing size. */
  readonly a: number;
  readonly fontPx: number;
  readonly lineHeightPx: number;
  readonly marginPx: number;
}

/** The schematic's room on a 1366×768 page; symbols have their drawing size there. */
const DESIGN: Size = { width: 1010, height: 470 };
const SMALLEST_SYMBOL = 0.9;
const LARGEST_SYMBOL = 2.4;
const FONT_PX = 16;
/** Letters grow slower than symbols, so that a big screen gains air between them. */
const FONT_GROWTH = 0.55;

/**
 * The least room the drawing can be set out in with letters of full size; in less it is set
 * out for this and shown smaller, to be zoomed.
 */
const LEAST: Size = { width: 800, height: 410 };

/** How much smaller than set out the drawing is shown, 1 or less; and the size to set it out for. */
export function fitInto(room: Size): { readonly shown: number; readonly size: Size } {
  const shown = Math.min(1, room.width / LEAST.width, room.height / LEAST.height);
  return { shown, size: { width: room.width / shown, height: room.height / shown } };
}

export function measuresFor(size: Size): Measures {
  const fit = Math.min(size.width / DESIGN.width, size.height / DESIGN.height);
  const a = Math.min(LARGEST_SYMBOL, Math.max(SMALLEST_SYMBOL, fit));
  const fontPx = Math.round(FONT_PX * (1 + Math.max(0, fit - 1) * FONT_GROWTH));
  return {
    size,
    a,
    fontPx,
    lineHeightPx: Math.round(fontPx * 1.25),
    marginPx: Math.round(Math.min(22, Math.max(8, size.height * 0.03))),
  };
}
