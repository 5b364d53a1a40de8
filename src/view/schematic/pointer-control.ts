import type { Point } from './layout-types.ts';

export interface PointerTarget {
  zoom(factor: number, at: Point): void;
  pan(dx: number, dy: number): void;
  tap(at: Point): void;
  /** null when the pointer has left. */
  hover(at: Point | null): void;
}

/** A press that moves less than this is a tap. */
const TAP_SLOP_PX = 6;
const WHEEL_ZOOM = 0.0016;

/** Mouse, pen and touch on the drawing: wheel and pinch zoom, drag pans, a short press picks. */
export function listenToPointer(canvas: HTMLElement, target: PointerTarget): () => void {
  const down = new Map<number, Point>();
  let travelled = 0;
  const at = (event: MouseEvent): Point => {
    const box = canvas.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const gap = (): { length: number; middle: Point } => {
    const [a, b] = [...down.values()];
    return {
      length: Math.hypot(a.x - b.x, a.y - b.y) || 1,
      middle: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
    };
  };

  const listeners: { [K in keyof HTMLElementEventMap]?: (event: HTMLElementEventMap[K]) => void } =
    {
      pointerdown(event) {
        if (down.size === 0) travelled = 0;
        down.set(event.pointerId, at(event));
        canvas.setPointerCapture(event.pointerId);
      },
      pointermove(event) {
        const now = at(event);
        const before = down.get(event.pointerId);
        if (before === undefined) {
          if (event.pointerType === 'mouse') target.hover(now);
          return;
        }
        if (down.size === 2) {
          const old = gap();
          down.set(event.pointerId, now);
          const next = gap();
          travelled += TAP_SLOP_PX;
          target.zoom(next.length / old.length, next.middle);
          target.pan(next.middle.x - old.middle.x, next.middle.y - old.middle.y);
          return;
        }
        down.set(event.pointerId, now);
        travelled += Math.hypot(now.x - before.x, now.y - before.y);
        if (travelled > TAP_SLOP_PX) target.pan(now.x - before.x, now.y - before.y);
      },
      pointerup(event) {
        const wasLast = down.size === 1 && down.delete(event.pointerId);
        down.delete(event.pointerId);
        if (wasLast && travelled <= TAP_SLOP_PX) target.tap(at(event));
      },
      pointercancel(event) {
        down.delete(event.pointerId);
      },
      pointerleave() {
        target.hover(null);
      },
      wheel(event) {
        event.preventDefault();
        target.zoom(Math.exp(-event.deltaY * WHEEL_ZOOM), at(event));
      },
    };
  const entries = Object.entries(listeners) as [string, EventListener][];
  for (const [type, listener] of entries) {
    canvas.addEventListener(type, listener, { passive: false });
  }
  return () => {
    for (const [type, listener] of entries) canvas.removeEventListener(type, listener);
  };
}
