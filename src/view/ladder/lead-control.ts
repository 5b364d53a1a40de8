import type { Point } from './layout-types.ts';
import type { Lead } from './leads.ts';
import {
  nearestTerminal,
  type Terminal,
  WALK_KEYS,
  type WalkKey,
  walkTerminals,
} from './terminals.ts';

/** What hands do with terminals: point, tap, drag a lead, walk by arrow keys. */
export interface LeadControl {
  /** The drawing was made anew. */
  relay(terminals: readonly Terminal[]): void;
  /** @param onStill it was let go where it was taken */
  drag(lead: Lead, event: PointerEvent, onStill?: () => void): void;
  stop(): void;
}

export interface LeadHands {
  /** A place of the window in the drawing's own measure; its zoom. */
  readonly toDrawing: (at: Pick<MouseEvent, 'clientX' | 'clientY'>) => Point;
  readonly zoom: () => number;
  readonly leadAt: (place: string) => Lead | null;
  readonly onPoint: (terminal: Terminal | null, isCursor: boolean) => void;
  readonly onTap: (terminal: Terminal) => void;
  readonly onTake: (lead: Lead) => void;
  readonly onDrag: (lead: Lead, at: Point, over: Terminal | null) => void;
  readonly onDrop: (lead: Lead, over: Terminal | null, outside: boolean) => void;
}

/** A finger's reach and a mouse's, on the screen. */
const REACH_PX = { mouse: 18, touch: 26, pen: 22 } as const;
const STILL_PX = 6;
const EDGE_PX = 44;
const EDGE_SCROLL_PX = 12;

export function createLeadControl(host: HTMLElement, hands: LeadHands): LeadControl {
  let terminals: readonly Terminal[] = [];
  let cursor = -1;
  let pressed: { readonly id: number; readonly x: number; readonly y: number } | null = null;
  let endDrag: (() => void) | null = null;

  const near = (event: PointerEvent): Terminal | null => {
    // What is scrolled out of sight lies under something else there.
    if (!isInside(event)) return null;
    const reach = REACH_PX[event.pointerType as keyof typeof REACH_PX] ?? REACH_PX.touch;
    return nearestTerminal(terminals, hands.toDrawing(event), reach / hands.zoom());
  };
  const grabbed = (event: PointerEvent): Lead | null => {
    const probe = event.target instanceof Element ? event.target.closest('[data-lead]') : null;
    if (probe === null || probe.classList.contains('is-other')) return null;
    return probe.getAttribute('data-lead') as Lead;
  };

  function drag(lead: Lead, start: PointerEvent, onStill?: () => void): void {
    endDrag?.();
    let moved = false;
    let last = start;
    const edge = setInterval(() => scrollAtEdge(last, moved), 16);
    const move = (event: PointerEvent): void => {
      if (event.pointerId !== start.pointerId) return;
      last = event;
      moved ||= Math.hypot(event.clientX - start.clientX, event.clientY - start.clientY) > STILL_PX;
      if (moved) hands.onDrag(lead, hands.toDrawing(event), near(event));
    };
    const up = (event: PointerEvent): void => {
      if (event.pointerId !== start.pointerId) return;
      end();
      if (moved) hands.onDrop(lead, near(event), !isInside(event));
      else onStill?.();
    };
    const cancel = (event: PointerEvent): void => {
      if (event.pointerId !== start.pointerId) return;
      end();
      if (moved) hands.onDrop(lead, null, false);
    };
    const end = (): void => {
      clearInterval(edge);
      removeEventListener('pointermove', move);
      removeEventListener('pointerup', up);
      removeEventListener('pointercancel', cancel);
      endDrag = null;
    };
    addEventListener('pointermove', move);
    addEventListener('pointerup', up);
    addEventListener('pointercancel', cancel);
    endDrag = end;
  }

  function isInside({ clientX, clientY }: PointerEvent): boolean {
    const box = host.getBoundingClientRect();
    return (
      clientX >= box.left && clientX <= box.right && clientY >= box.top && clientY <= box.bottom
    );
  }

  function scrollAtEdge(event: PointerEvent, moved: boolean): void {
    if (!moved || !isInside(event)) return;
    const box = host.getBoundingClientRect();
    const y = event.clientY - box.top;
    const x = event.clientX - box.left;
    const dy = y < EDGE_PX ? -EDGE_SCROLL_PX : y > box.height - EDGE_PX ? EDGE_SCROLL_PX : 0;
    const dx = x < EDGE_PX ? -EDGE_SCROLL_PX : x > box.width - EDGE_PX ? EDGE_SCROLL_PX : 0;
    if (dx !== 0 || dy !== 0) host.scrollBy(dx, dy);
  }

  const listeners: { [K in keyof HTMLElementEventMap]?: (event: HTMLElementEventMap[K]) => void } =
    {
      pointerdown(event) {
        if (!event.isPrimary || event.button !== 0) {
          pressed = null;
          return;
        }
        const lead = grabbed(event);
        if (lead !== null) {
          event.preventDefault();
          event.stopImmediatePropagation();
          host.focus({ preventScroll: true });
          drag(lead, event, () => hands.onTake(lead));
          return;
        }
        pressed = { id: event.pointerId, x: event.clientX, y: event.clientY };
      },
      pointermove(event) {
        if (endDrag !== null) return;
        if (pressed !== null) {
          const far = Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y);
          if (far > STILL_PX) pressed = null;
          return;
        }
        if (event.pointerType === 'mouse' && event.buttons === 0) hands.onPoint(near(event), false);
      },
      pointerup(event) {
        const tapped = pressed !== null && pressed.id === event.pointerId;
        pressed = null;
        if (!tapped) return;
        const terminal = near(event);
        if (terminal === null) return;
        cursor = terminals.indexOf(terminal);
        hands.onPoint(terminal, false);
        hands.onTap(terminal);
      },
      pointercancel() {
        pressed = null;
      },
      pointerleave() {
        if (endDrag === null) hands.onPoint(null, false);
      },
      blur() {
        hands.onPoint(null, false);
      },
      keydown(event) {
        if (event.ctrlKey || event.metaKey || event.altKey) return;
        const here = terminals[cursor];
        if (isWalkKey(event.key)) {
          cursor = here === undefined ? firstSeen() : walkTerminals(terminals, cursor, event.key);
          hands.onPoint(terminals[cursor] ?? null, true);
        } else if (event.key === 'Enter' && here !== undefined) hands.onTap(here);
        else if ((event.key === 'Delete' || event.key === 'Backspace') && here !== undefined) {
          const lead = hands.leadAt(here.id);
          if (lead !== null) hands.onTake(lead);
        } else if (event.key === 'Escape' && here !== undefined) {
          cursor = -1;
          hands.onPoint(null, false);
        } else return;
        event.preventDefault();
        event.stopPropagation();
      },
    };

  /** The first terminal in view, so that walking begins where one looks. */
  function firstSeen(): number {
    const box = host.getBoundingClientRect();
    const top = hands.toDrawing({ clientX: box.left, clientY: box.top }).y;
    return Math.max(
      0,
      terminals.findIndex(({ y }) => y >= top),
    );
  }

  const entries = Object.entries(listeners) as [string, EventListener][];
  for (const [type, listener] of entries) host.addEventListener(type, listener);
  return {
    relay(next) {
      const id = terminals[cursor]?.id;
      terminals = next;
      cursor = id === undefined ? -1 : next.findIndex((each) => each.id === id);
    },
    drag,
    stop() {
      endDrag?.();
      for (const [type, listener] of entries) host.removeEventListener(type, listener);
    },
  };
}

function isWalkKey(key: string): key is WalkKey {
  return (WALK_KEYS as readonly string[]).includes(key);
}
