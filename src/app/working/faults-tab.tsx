import { useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Unit } from '../../quantity/index.ts';
import { controlsAt } from '../reading/controls-at.ts';
import { insertedByHand } from '../reading/hidden-faults.ts';
import { severityScale, severityText } from '../reading/severity-scale.ts';
import type { FaultFacts } from '../session/protocol.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { useFacts, useSession, useSessionPart } from './session-context.tsx';

/** The catalogue: put a fault into the running plant, or take it out again. */
export function FaultsTab() {
  const { faults } = useFacts();
  const families = useMemo(() => groupByFamily(faults), [faults]);
  return (
    <div className="faults">
      <StandingFaults />
      <p className="quiet">{say('app.faults.lead')}</p>
      {families.map(({ family, members }) => (
        <details key={family} className="family">
          <summary>
            {family} <span className="quiet">{members.length}</span>
          </summary>
          <ul>
            {members.map((fault) => (
              <FaultLine key={fault.id} fault={fault} />
            ))}
          </ul>
        </details>
      ))}
      <p className="caution">{say('app.caution.faults')}</p>
    </div>
  );
}

function StandingFaults() {
  const session = useSession();
  const [shown, setShown] = useState(false);
  const events = useSessionPart((state) => state.events);
  const shownS = useSessionPart((state) => state.shownS);
  const standing = useMemo(() => controlsAt(events, shownS).standingFaults, [events, shownS]);
  const { faults } = useFacts();
  const { units } = useStore(settings);
  const open = standing.filter(({ fault }) => shown || insertedByHand(fault, events));
  const hidden = standing.length - open.length;
  return (
    <section className="standing" aria-label={say('app.faults.standing')}>
      <h3>{say('app.faults.standing')}</h3>
      {standing.length === 0 ? <p className="quiet">{say('app.faults.none-standing')}</p> : null}
      <ul>
        {open.map(({ fault, severity }) => (
          <li key={fault} className="standing-fault">
            <span className="standing-name">
              <strong>{fault}</strong>
              <span className="quiet">{severityText(unitOf(faults, fault), severity, units)}</span>
            </span>
            <button
              type="button"
              className="button standing-act"
              onClick={() => session.act({ type: 'clear-fault', fault })}
            >
              {say('app.faults.clear')}
            </button>
          </li>
        ))}
      </ul>
      {hidden > 0 ? (
        <p className="hidden-fault">
          <span>{say('app.faults.hidden')}</span>
          <button type="button" className="button standing-act" onClick={() => setShown(true)}>
            {say('app.faults.reveal')}
          </button>
        </p>
      ) : null}
    </section>
  );
}

function FaultLine({ fault }: { readonly fault: FaultFacts }) {
  const session = useSession();
  const { units } = useStore(settings);
  const [severity, setSeverity] = useState(fault.typical);
  const fixed = fault.max - fault.min <= 0;
  const text = severityText(fault.unit as Unit, severity, units);
  const scale = severityScale(fault.min, fault.max);
  return (
    <li className="fault">
      <h4>{fault.id}</h4>
      <p className="quiet">{fault.mechanism}</p>
      {fixed ? null : (
        <label className="severity">
          <span className="severity-line">
            <span>{fault.means}</span> <strong>{text}</strong>
          </span>
          <input
            type="range"
            min={0}
            max={1}
            step={0.005}
            value={scale.placeOf(severity)}
            aria-valuetext={text}
            onChange={(event) => setSeverity(scale.at(Number(event.target.value)))}
          />
        </label>
      )}
      <button
        type="button"
        className="button"
        onClick={() => session.act({ type: 'insert-fault', fault: fault.id, severity })}
      >
        {say('app.faults.insert')}
      </button>
    </li>
  );
}

function unitOf(faults: readonly FaultFacts[], id: string): Unit {
  return (faults.find((fault) => fault.id === id)?.unit ?? '1') as Unit;
}

function groupByFamily(faults: readonly FaultFacts[]) {
  const families = new Map<string, FaultFacts[]>();
  for (const fault of faults) {
    const members = families.get(fault.family);
    if (members === undefined) families.set(fault.family, [fault]);
    else members.push(fault);
  }
  return [...families].map(([family, members]) => ({ family, members }));
}
