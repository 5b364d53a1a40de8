import { useEffect, useMemo, useState } from 'react';
import { listWork } from '../work/device-work.ts';
import { deviceShelf } from '../work/shelf.ts';
import { exercisesToSuggest } from './exercises-to-suggest.ts';
import {
  eraseResults,
  exportResults,
  importResults,
  keptResults,
  RESULTS_KEY,
  type ResultsImported,
  type ResultsKept,
} from './keep-results.ts';
import { type LearnerMap, learnerMap } from './learner-map.ts';

export interface LearnerMapOfDevice {
  readonly kept: ResultsKept;
  readonly map: LearnerMap;
  /** Hands a file with everything over to the browser. */
  exportAll(): void;
  importFile(file: File): Promise<ResultsImported>;
  erase(): void;
}

/** The learner map of this device; made anew when another page has added to it. */
export function useLearnerMap(): LearnerMapOfDevice {
  const [kept, setKept] = useState(() => keptResults(deviceShelf));
  useEffect(() => {
    const renew = ({ key }: StorageEvent): void => {
      if (key === null || key === RESULTS_KEY) setKept(keptResults(deviceShelf));
    };
    addEventListener('storage', renew);
    return () => removeEventListener('storage', renew);
  }, []);
  const map = useMemo(() => learnerMap(kept.results, freeExercises()), [kept]);
  return {
    kept,
    map,
    exportAll() {
      const text = exportResults(deviceShelf);
      const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
      const link = document.createElement('a');
      link.href = url;
      link.download = 'flamewright-results.json';
      link.click();
      URL.revokeObjectURL(url);
    },
    async importFile(file) {
      const imported = importResults(deviceShelf, await file.text());
      setKept(keptResults(deviceShelf));
      return imported;
    },
    erase() {
      eraseResults(deviceShelf, new Date().toISOString());
      setKept(keptResults(deviceShelf));
    },
  };
}

/** What is in hand is gone on with; it is not suggested anew. */
function freeExercises() {
  const inHand = listWork().entries.filter(({ closed }) => !closed);
  return exercisesToSuggest().filter(
    ({ kind, id }) => !inHand.some((work) => work.kind === kind && work.id === id),
  );
}
