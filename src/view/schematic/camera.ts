import type { Point, Rect, Size } from './layout-types.ts';

/** The picture is drawn at `scale` with its corner at (x, y). */
export interface Camera {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export const WHOLE: Camera = { scale: 1, x: 0, y: 0 };
export const CLOSEST = 6;

/** Zoom that leaves the point under the pointer where it is. */
export function zoomAt(camera: Camera, factor: number, at: Point, size: Size): Camera {
  const scale = Math.min(CLOSEST, Math.max(1, camera.scale * factor));
  const ratio = scale / camera.scale;
  return keepInside(
    { scale, x: at.x - (at.x - camera.x) * ratio, y: at.y - (at.y - camera.y) * ratio },
    size,
  );
}

export function panBy(camera: Camera, dx: number, dy: number, size: Size): Camera {
  return keepInside({ ...camera, x: camera.x + dx, y: camera.y + dy }, size);
}

/** The picture always covers the view: there is nothing to see beside it. */
export function keepInside(camera: Camera, size: Size): Camera {
  const bound = (value: number, extent: number): number =>
    Math.min(0, Math.max(extent * (1 - camera.scale), value)) || 0;
  return { scale: camera.scale, x: bound(camera.x, size.width), y: bound(camera.y, size.height) };
}

/**
 * The camera that shows a part of the drawing in the middle of a free part of the view. Sideways
 * it may look past the edge: what stands there must not stay behind what covers the view.
 */
export function lookAt(box: Rect, scale: number, view: Rect, size: Size): Camera {
  const x = view.x + view.width / 2 - (box.x + box.width / 2) * scale;
  const y = view.y + view.height / 2 - (box.y + box.height / 2) * scale;
  return { ...keepInside({ scale, x, y }, size), x };
}

export function toDrawing(camera: Camera, at: Point): Point {
  return { x: (at.x - camera.x) / camera.scale, y: (at.y - camera.y) / camera.scale };
}

/** Part of the way from one camera to another; zoom is eased in proportion. */
export function between(from: Camera, to: Camera, part: number): Camera {
  const eased = part * part * (3 - 2 * part);
  const mix = (a: number, b: number): number => a + (b - a) * eased;
  return { scale: mix(from.scale, to.scale), x: mix(from.x, to.x), y: mix(from.y, to.y) };
}
