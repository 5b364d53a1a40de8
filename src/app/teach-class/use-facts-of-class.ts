import { useEffect } from 'react';
import type { Facts } from '../session/protocol.ts';
import type { SessionState } from '../session/session-types.ts';
import { createStore, useStorePart } from '../session/store.ts';
import { useTeach } from './teach-context.ts';

const NO_RUN = createStore<Pick<SessionState, 'facts'>>({ facts: null });

/** What there is at the plant of the class; null until it is known. */
export function useFactsOfClass(): Facts | null {
  const { session, wantFacts } = useTeach();
  useEffect(() => wantFacts(), [wantFacts]);
  return useStorePart(session?.store ?? NO_RUN, ({ facts }) => facts);
}
