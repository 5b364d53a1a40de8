import type { Point } from './layout-types.ts';

/** Zoom and movement of a drawing in a host that scrolls: scrolling itself is the browser's. */
export interface ScrollControl {
  zoomBy(factor: number): void;
  /** The drawing was made anew: show it at the zoom there is. */
  fit(): void;
  bringIntoView(top: number, bottom: number): void;
  bringAcross(left: number, right: number): void;
  stop(): void;
}

export const CLOSEST = 3;
export const FURTHEST = 0.5;
const WHEEL_ZOOM = 0.0016;
const KEY_ZOOM = 1.25;
const MARGIN_PX = 12;

export function boundedZoom(zoom: number, factor: number): number {
  return Math.min(CLOSEST, Math.max(FURTHEST, zoom * factor));
}

/**
 * Where to scroll so that a stretch is seen: nowhere if it is seen already; its top first if it
 * is longer than the view.
 */
export function scrollFor(
  top: number,
  bottom: number,
  view: { readonly top: number; readonly height: number },
): number {
  const above = top - MARGIN_PX;
  const below = bottom + MARGIN_PX - view.height;
  if (above >= view.top && below <= view.top) return view.top;
  return Math.max(0, above < view.top || bottom - top > view.height ? above : below);
}

interface Pinch {
  readonly middle: Point;
  readonly apartPx: number;
}
const DRAGGED = 'is-dragged';

export function createScrollControl(
  host: HTMLElement,
  setZoom: (zoom: number) => void,
): ScrollControl {
  let zoom = 1;
  let dragged: Point | null = null;
  let pinched: Pinch | null = null;

  function zoomAt(factor: number, at: Point): void {
    const next = boundedZoom(zoom, factor);
    if (next === zoom) return;
    const ratio = next / zoom;
    const x = (host.scrollLeft + at.x) * ratio - at.x;
    const y = (host.scrollTop + at.y) * ratio - at.y;
    zoom = next;
    setZoom(zoom);
    host.scrollTo(x, y);
  }
  const middle = (): Point => ({ x: host.clientWidth / 2, y: host.clientHeight / 2 });
  const at = (event: Pick<MouseEvent, 'clientX' | 'clientY'>): Point => {
    const box = host.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const pinchOf = ([first, second]: TouchList): Pinch => {
    const [a, b] = [at(first), at(second)];
    return {
      middle: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
      apartPx: Math.max(1, Math.hypot(a.x - b.x, a.y - b.y)),
    };
  };
  const listeners: { [K in keyof HTMLElementEventMap]?: (event: HTMLElementEventMap[K]) => void } =
    {
      wheel(event) {
        if (!event.ctrlKey && !event.metaKey) return;
        event.preventDefault();
        zoomAt(Math.exp(-event.deltaY * WHEEL_ZOOM * 3), at(event));
      },
      keydown(event) {
        if (event.ctrlKey || event.metaKey || event.altKey) return;
        if (event.key === '+' || event.key === '=') zoomAt(KEY_ZOOM, middle());
        else if (event.key === '-') zoomAt(1 / KEY_ZOOM, middle());
        else if (event.key === '0') zoomAt(1 / zoom, { x: 0, y: 0 });
        else return;
        event.preventDefault();
        event.stopPropagation();
      },
      pointerdown(event) {
        // Fingers scroll by themselves; a mouse has to be helped.
        if (event.pointerType !== 'mouse' || event.button !== 0) return;
        dragged = at(event);
        host.setPointerCapture(event.pointerId);
        host.classList.add(DRAGGED);
      },
      pointermove(event) {
        if (dragged === null) return;
        const now = at(event);
        host.scrollBy(dragged.x - now.x, dragged.y - now.y);
        dragged = now;
      },
      pointerup: letGo,
      pointercancel: letGo,
      touchstart: takePinch,
      touchend: takePinch,
      touchcancel: takePinch,
      touchmove(event) {
        if (pinched === null || event.touches.length !== 2 || !event.cancelable) return;
        event.preventDefault();
        const next = pinchOf(event.touches);
        host.scrollBy(pinched.middle.x - next.middle.x, pinched.middle.y - next.middle.y);
        zoomAt(next.apartPx / pinched.apartPx, next.middle);
        pinched = next;
      },
    };
  function takePinch(event: TouchEvent): void {
    pinched = event.touches.length === 2 ? pinchOf(event.touches) : null;
  }
  function letGo(): void {
    dragged = null;
    host.classList.remove(DRAGGED);
  }
  const entries = Object.entries(listeners) as [string, EventListener][];
  for (const [type, listener] of entries) {
    host.addEventListener(type, listener, { passive: false });
  }
  return {
    zoomBy: (factor) => zoomAt(factor, middle()),
    fit: () => setZoom(zoom),
    bringIntoView(top, bottom) {
      const view = { top: host.scrollTop, height: host.clientHeight };
      host.scrollTo({ top: scrollFor(top * zoom, bottom * zoom, view) });
    },
    bringAcross(left, right) {
      const view = { top: host.scrollLeft, height: host.clientWidth };
      host.scrollTo({ left: scrollFor(left * zoom, right * zoom, view) });
    },
    stop() {
      for (const [type, listener] of entries) host.removeEventListener(type, listener);
    },
  };
}
