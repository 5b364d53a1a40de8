import { createContext, useContext } from 'react';
import type { Facts } from '../session/protocol.ts';
import type { Session, SessionState } from '../session/session-types.ts';
import { useStore, useStorePart } from '../session/store.ts';

const SessionContext = createContext<Session | null>(null);
export const SessionProvider = SessionContext.Provider;

export function useSession(): Session {
  const session = useContext(SessionContext);
  if (session === null) throw new Error('no session around this part of the page');
  return session;
}

export function useSessionState(): SessionState {
  return useStore(useSession().store);
}

/** Renders only when the picked part changes. */
export function useSessionPart<P>(pick: (state: SessionState) => P): P {
  return useStorePart(useSession().store, pick);
}

/** Facts of the run; only parts of the page that stand once it is open may ask. */
export function useFacts(): Facts {
  const facts = useSessionPart((state) => state.facts);
  if (facts === null) throw new Error('the run is not open yet');
  return facts;
}
