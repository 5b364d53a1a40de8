import { useCallback, useEffect, useRef, useState } from 'react';
import { lmsPackage, type PackageWish, packagedOf } from '../../records/lms/index.ts';
import { saveFile } from '../teach-paper/save-file.ts';
import { fetchPage } from './fetch-page.ts';

export type PackageNow =
  | { readonly is: 'none' | 'packing' | 'no list' | 'broken' }
  | { readonly is: 'fetching'; readonly done: number; readonly of: number }
  | { readonly is: 'saved'; readonly file: string; readonly bytes: number };

/** A package as it is being made; one at a time. */
export function usePackage() {
  const [now, setNow] = useState<PackageNow>({ is: 'none' });
  const isThere = useRef(true);
  useEffect(() => {
    isThere.current = true;
    return () => {
      isThere.current = false;
    };
  }, []);
  const make = useCallback(async (wish: PackageWish, about: string) => {
    const tell = (next: PackageNow): void => {
      if (isThere.current) setNow(next);
    };
    tell({ is: 'fetching', done: 0, of: 1 });
    const page = await fetchPage((done, of) => tell({ is: 'fetching', done, of }));
    if (!isThere.current) return;
    if (!page.ok) {
      tell({ is: page.why });
      return;
    }
    tell({ is: 'packing' });
    // What is said now is to be seen before the page is busy.
    await new Promise((done) => setTimeout(done, 50));
    try {
      const file = lmsPackage(packagedOf(wish), page.files, { about });
      saveFile(file);
      tell({ is: 'saved', file: file.name, bytes: file.data.length });
    } catch {
      tell({ is: 'broken' });
    }
  }, []);
  return { now, make };
}
