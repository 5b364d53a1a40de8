import { useRef, useState } from 'react';

/**
 * What stands in a field while someone types in it: the file may write it otherwise, and the field
 * must not jump under the hands. What comes from elsewhere, as by undoing, takes its place.
 */
export function useDraft(written: string, commit: (text: string) => void) {
  const [draft, setDraft] = useState<string | null>(null);
  const told = useRef(written);
  const isElsewhere = draft !== null && written !== told.current;
  return {
    value: draft === null || isElsewhere ? written : draft,
    onFocus: () => {
      told.current = written;
      setDraft(written);
    },
    onBlur: () => setDraft(null),
    /** @param kept how the file will have it */
    type: (text: string, kept: string) => {
      told.current = kept;
      setDraft(text);
      commit(text);
    },
  };
}
