import { panBy, toDrawing, WHOLE, zoomAt } from './camera.ts';
import type { CloseLook } from './close-look.ts';
import type { DrawnPlant } from './drawn-plant.ts';
import type { FrameView } from './frame-view.ts';
import { itemAt, type SchematicItem } from './items.ts';
import { actOfKey } from './key-control.ts';
import type { Point } from './layout-types.ts';
import type { PointedItem } from './pointed-item.ts';
import { listenToPointer } from './pointer-control.ts';
import type { ViewCamera } from './view-camera.ts';

/** What pointer and keys do on the canvas. */
export interface HandControl {
  /** Zoom on the middle of the view. */
  zoomBy(factor: number): void;
  stop(): void;
}

interface Handled {
  readonly drawn: () => DrawnPlant;
  /** Pixels of the canvas to a pixel of the drawing. */
  readonly shown: () => number;
  readonly view: FrameView;
  readonly camera: ViewCamera;
  readonly pointed: PointedItem;
  readonly closeLook: CloseLook;
  /** null when the close-up was left. */
  readonly picked: (itemId: string | null) => void;
}

export function listenToHands(canvas: HTMLCanvasElement, handled: Handled): HandControl {
  const { drawn, shown, view, camera, pointed, closeLook, picked } = handled;
  const size = () => drawn().context.layout.size;

  function unfit(at: Point): Point {
    return { x: at.x / shown(), y: at.y / shown() };
  }

  function itemUnder(at: Point): SchematicItem | null {
    return closeLook.covers(at) ? null : itemAt(drawn().items, toDrawing(camera.camera, at));
  }

  function tap(at: Point): void {
    canvas.focus({ preventScroll: true });
    if (closeLook.covers(at)) {
      if (closeLook.closesAt(at)) leave();
      return;
    }
    const item = itemUnder(at);
    if (item !== null) picked(item.id);
  }

  function leave(): void {
    closeLook.open(null, true);
    picked(null);
  }

  function zoomBy(factor: number): void {
    const { width, height } = size();
    camera.move(zoomAt(camera.camera, factor, { x: width / 2, y: height / 2 }, size()));
  }

  function onKey(event: KeyboardEvent): void {
    const act = actOfKey(event.key, event);
    if (act === null) return;
    if (act.type === 'leave' && closeLook.itemId === null && camera.camera === WHOLE) return;
    event.preventDefault();
    if (act.type === 'zoom') zoomBy(act.factor);
    else if (act.type === 'pan') camera.move(panBy(camera.camera, act.dx, act.dy, size()));
    else if (closeLook.itemId !== null) leave();
    else camera.fly(WHOLE, view.still);
  }

  const stopPointer = listenToPointer(canvas, {
    zoom: (factor, at) => camera.move(zoomAt(camera.camera, factor, unfit(at), size())),
    pan: (dx, dy) => camera.move(panBy(camera.camera, dx / shown(), dy / shown(), size())),
    tap: (at) => tap(unfit(at)),
    hover(at) {
      const over = at === null ? null : itemUnder(unfit(at));
      const idle = camera.camera.scale > 1 ? 'grab' : 'default';
      canvas.style.cursor = over === null ? idle : 'pointer';
      pointed.show(over?.id ?? null);
    },
  });
  canvas.addEventListener('keydown', onKey);
  return {
    zoomBy,
    stop() {
      stopPointer();
      canvas.removeEventListener('keydown', onKey);
    },
  };
}
