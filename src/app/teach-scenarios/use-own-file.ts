import { useCallback, useEffect, useRef, useState } from 'react';
import { deviceShelf } from '../work/shelf.ts';
import { type KeepTrouble, type OwnFile, writeOwn } from './own-files.ts';

/** What is typed is kept this soon, s a letter more or less may be lost and no line. */
const KEPT_AFTER_MS = 300;

/** A file of this device while it is edited: kept as it is typed, saved when that is wanted. */
export function useOwnFile(first: OwnFile, text: string, isKept: boolean) {
  const [file, setFile] = useState(first);
  const [trouble, setTrouble] = useState<KeepTrouble | null>(null);
  const now = useRef({ file, text });
  now.current = { file, text };

  const keep = useCallback((next: OwnFile) => {
    setTrouble(writeOwn(deviceShelf, next));
    setFile(next);
    now.current = { ...now.current, file: next };
  }, []);

  const keepTyped = useCallback(() => {
    const { file: own, text: typed } = now.current;
    if (typed !== own.text) keep({ ...own, text: typed, typedISO: new Date().toISOString() });
  }, [keep]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: after each change of the text
  useEffect(() => {
    if (!isKept) return;
    const timer = setTimeout(keepTyped, KEPT_AFTER_MS);
    return () => clearTimeout(timer);
  }, [text, keepTyped, isKept]);
  useEffect(() => {
    if (!isKept) return;
    addEventListener('pagehide', keepTyped);
    return () => {
      removeEventListener('pagehide', keepTyped);
      keepTyped();
    };
  }, [keepTyped, isKept]);

  return { file, trouble, keep };
}
