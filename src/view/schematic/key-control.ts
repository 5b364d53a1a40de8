/** What a key does to the drawing. */
export type KeyAct =
  | { readonly type: 'zoom'; readonly factor: number }
  | { readonly type: 'pan'; readonly dx: number; readonly dy: number }
  | { readonly type: 'whole' }
  | { readonly type: 'leave' };

const STEP_PX = 60;
const ZOOM_STEP = 1.25;

const ACTS: Readonly<Record<string, KeyAct>> = {
  '+': { type: 'zoom', factor: ZOOM_STEP },
  '=': { type: 'zoom', factor: ZOOM_STEP },
  '-': { type: 'zoom', factor: 1 / ZOOM_STEP },
  _: { type: 'zoom', factor: 1 / ZOOM_STEP },
  ArrowLeft: { type: 'pan', dx: STEP_PX, dy: 0 },
  ArrowRight: { type: 'pan', dx: -STEP_PX, dy: 0 },
  ArrowUp: { type: 'pan', dx: 0, dy: STEP_PX },
  ArrowDown: { type: 'pan', dx: 0, dy: -STEP_PX },
  '0': { type: 'whole' },
  Escape: { type: 'leave' },
};

/** null for a key that is not ours, or one pressed with a modifier the browser wants. */
export function actOfKey(
  key: string,
  modifiers: { readonly ctrlKey: boolean; readonly metaKey: boolean; readonly altKey: boolean },
): KeyAct | null {
  if (modifiers.ctrlKey || modifiers.metaKey || modifiers.altKey) return null;
  return ACTS[key] ?? null;
}
