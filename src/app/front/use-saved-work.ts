import { useState } from 'react';
import { sayWord } from '../../i18n/index.ts';
import { eraseWork, exportWork, importWork, listWork } from '../work/device-work.ts';
import type { WorkList } from '../work/work-types.ts';

export interface SavedWorkOfDevice {
  readonly list: WorkList;
  erase(what: Parameters<typeof eraseWork>[0]): void;
  /** Hands a file with everything over to the browser. */
  exportAll(): void;
  /** What was taken in, in numbers, and what went wrong, in words. */
  importFile(file: File): Promise<{ readonly taken: number; readonly troubles: readonly string[] }>;
}

/** The work that this device keeps, listed anew after each change. */
export function useSavedWork(): SavedWorkOfDevice {
  const [list, setList] = useState(listWork);
  return {
    list,
    erase(what) {
      eraseWork(what);
      setList(listWork());
    },
    exportAll() {
      const url = URL.createObjectURL(new Blob([exportWork()], { type: 'application/json' }));
      const link = document.createElement('a');
      link.href = url;
      link.download = 'flamewright-work.json';
      link.click();
      URL.revokeObjectURL(url);
    },
    async importFile(file) {
      const { taken, issues } = importWork(await file.text());
      setList(listWork());
      return {
        taken: taken.length,
        troubles: issues.map(({ trouble }) => sayWord('work.trouble', trouble)),
      };
    },
  };
}
