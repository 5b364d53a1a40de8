// The page forbids code made from text; this swaps in Pixi's renderer code that does without.
import 'pixi.js/unsafe-eval';
import { autoDetectRenderer, type Renderer } from 'pixi.js';
import { paletteOf } from '../palette.ts';
import { gpuName } from './gpu-name.ts';
import type { Size } from './layout-types.ts';
import { rendererFor } from './renderer-choice.ts';
import type { SchematicOptions } from './types.ts';

const SMALLEST_SIDE_PX = 120;

/** A canvas that takes keys and touch, as large as its host, and what draws on it. */
export async function openRenderer(
  host: HTMLElement,
  options: SchematicOptions,
): Promise<{ readonly canvas: HTMLCanvasElement; readonly renderer: Renderer }> {
  const canvas = document.createElement('canvas');
  Object.assign(canvas.style, { touchAction: 'none', display: 'block' });
  canvas.tabIndex = 0;
  canvas.setAttribute('role', 'application');
  const wanted = options.renderer ?? 'auto';
  const renderer = await autoDetectRenderer({
    preference: wanted === 'auto' ? rendererFor(gpuName()) : wanted,
    canvas,
    ...roomIn(host),
    resolution: window.devicePixelRatio || 1,
    autoDensity: true,
    antialias: true,
    background: paletteOf(options.theme ?? 'light').ground,
  });
  host.append(canvas);
  return { canvas, renderer };
}

export function roomIn(host: HTMLElement): Size {
  return {
    width: Math.max(SMALLEST_SIDE_PX, host.clientWidth),
    height: Math.max(SMALLEST_SIDE_PX, host.clientHeight),
  };
}

/** Letters are painted in two weights; either may come after the first picture. */
export function fontsIn(family: string): Promise<unknown> {
  return Promise.all(
    ['400', '600'].map((weight) => document.fonts.load(`${weight} 16px ${family}`)),
  );
}
