import { useMemo } from 'react';
import { isFor } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';
import type { Unit } from '../../quantity/index.ts';
import { controlsAt } from '../reading/controls-at.ts';
import { severityText } from '../reading/severity-scale.ts';
import type { FaultFacts } from '../session/protocol.ts';
import type { SessionState } from '../session/session-types.ts';
import { createStore, useStore, useStorePart } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { standingByActs } from './fault-acts.ts';
import { useChosenSeats, useTeach } from './teach-context.ts';

interface Standing {
  readonly fault: string;
  /** Null where it is only known that it was put in. */
  readonly severity: number | null;
}

/** What stands, as far as it is known here, and a way to take it out. */
export function FaultsStanding({ faults }: { readonly faults: readonly FaultFacts[] }) {
  const { own, drive } = useTeach();
  const { units } = useStore(settings);
  const led = useLedFaults();
  const told = useToldFaults();
  const standing = own.way === 'together' ? led : told;
  if (standing.length === 0) return null;
  return (
    <section className="waiting-acts" aria-labelledby="standing-title">
      <h3 id="standing-title">
        {say(own.way === 'together' ? 'app.faults.standing' : 'teach-class.fault.put-in-here')}
      </h3>
      <ul>
        {standing.map(({ fault, severity }) => (
          <li key={fault}>
            <span>
              <strong>{fault}</strong>
              {severity === null ? null : (
                <span className="quiet">
                  {severityText(unitOf(faults, fault), severity, units)}
                </span>
              )}
            </span>
            <button
              type="button"
              className="button"
              onClick={() => drive.act([{ type: 'clear-fault', fault }], null)}
            >
              {say('app.faults.clear')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

const NO_RUN = createStore<Pick<SessionState, 'events' | 'shownS'>>({ events: [], shownS: 0 });

function useLedFaults(): readonly Standing[] {
  const { session } = useTeach();
  const store = session?.store ?? NO_RUN;
  const events = useStorePart(store, (state) => state.events);
  const shownS = useStorePart(store, (state) => state.shownS);
  return useMemo(() => controlsAt(events, shownS).standingFaults, [events, shownS]);
}

/** Of own copies only what was ordered is known: each seat may have mended it since. */
function useToldFaults(): readonly Standing[] {
  const { client } = useTeach();
  const entries = useStorePart(client.store, (now) => now.entries);
  const seats = useChosenSeats();
  return useMemo(() => {
    const acts = entries.flatMap((entry) => {
      if (entry.type !== 'do') return [];
      const isMeant = seats.length === 0 || seats.some((seat) => isFor(entry.to, seat));
      return isMeant ? entry.acts : [];
    });
    return standingByActs(acts).map((fault) => ({ fault, severity: null }));
  }, [entries, seats]);
}

function unitOf(faults: readonly FaultFacts[], id: string): Unit {
  return (faults.find((fault) => fault.id === id)?.unit ?? '1') as Unit;
}
