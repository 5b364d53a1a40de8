import { useCallback, useReducer } from 'react';

/** Changes of one kind that follow each other this closely are undone together. */
const TOGETHER_MS = 900;
const MOST_STATES = 300;

export interface History {
  readonly past: readonly string[];
  readonly text: string;
  readonly future: readonly string[];
  /** Of the last change: what is of the same kind, and soon, goes along with it. */
  readonly kind: string;
  readonly atMs: number;
}

export type HistoryStep =
  | { readonly do: 'change'; readonly text: string; readonly kind: string; readonly atMs: number }
  | { readonly do: 'undo' }
  | { readonly do: 'redo' };

export function historyOf(text: string): History {
  return { past: [], text, future: [], kind: '', atMs: 0 };
}

/** One history of the text, whoever changed it: hands in the text or in the form. */
export function stepHistory(history: History, step: HistoryStep): History {
  const { past, text, future } = history;
  switch (step.do) {
    case 'change': {
      if (step.text === text) return history;
      const together =
        step.kind !== '' && step.kind === history.kind && step.atMs - history.atMs < TOGETHER_MS;
      return {
        past: together && past.length > 0 ? past : [...past, text].slice(-MOST_STATES),
        text: step.text,
        future: [],
        kind: step.kind,
        atMs: step.atMs,
      };
    }
    case 'undo': {
      const before = past.at(-1);
      if (before === undefined) return history;
      return { ...historyOf(before), past: past.slice(0, -1), future: [text, ...future] };
    }
    case 'redo': {
      const [next, ...rest] = future;
      if (next === undefined) return history;
      return { ...historyOf(next), past: [...past, text], future: rest };
    }
  }
}

export function useHistory(first: string) {
  const [history, step] = useReducer(stepHistory, first, historyOf);
  const change = useCallback((text: string, kind: string) => {
    step({ do: 'change', text, kind, atMs: performance.now() });
  }, []);
  const undo = useCallback(() => step({ do: 'undo' }), []);
  const redo = useCallback(() => step({ do: 'redo' }), []);
  return { history, change, undo, redo };
}
