import type { ClassPace } from '../../../machines/class/index.ts';
import type { SessionState } from '../session/session-types.ts';
import { createStore, useStorePart } from '../session/store.ts';
import { useTeach } from './teach-context.ts';

const NO_RUN = createStore<Pick<SessionState, 'status'>>({ status: null });

/** How the leading run goes; it stands still where there is none. */
export function useLeading(): ClassPace {
  const { session } = useTeach();
  const store = session?.store ?? NO_RUN;
  const frozen = useStorePart(store, ({ status }) => status === null || status.mode === 'paused');
  const speed = useStorePart(store, ({ status }) => status?.speed ?? 1);
  return { frozen, speed };
}
