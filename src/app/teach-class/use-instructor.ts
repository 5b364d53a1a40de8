import { useEffect, useState } from 'react';
import { connectInstructor } from '../../classroom/client/index.ts';
import type { InstructorClient } from '../../classroom/index.ts';
import { wakeOfPage } from '../class/wake-of-page.ts';
import type { OwnClass } from './own-classes.ts';
import { shelfOfPage } from './shelf-of-page.ts';

/** The connection to a class, for as long as the page stands. */
export function useInstructor({ id, secret }: OwnClass): InstructorClient | null {
  const [client, setClient] = useState<InstructorClient | null>(null);
  useEffect(() => {
    const opened = connectInstructor(
      { class: id, secret },
      { shelf: shelfOfPage(`flamewright.class.${id}.`), wake: wakeOfPage },
    );
    setClient(opened);
    return () => {
      opened.close();
      setClient(null);
    };
  }, [id, secret]);
  return client;
}
