import { useEffect, useState } from 'react';
import { loadMessages, say } from '../../i18n/index.ts';
import type { Ladder } from '../../view/index.ts';
import { useStore } from '../session/store.ts';
import { LadderHost } from './ladder-host.tsx';
import { LadderLeads, type LeadUse } from './ladder-leads.tsx';
import type { StripReading } from './ladder-meter-strip.tsx';
import { useSession } from './session-context.tsx';

interface Props {
  readonly follow: boolean;
  readonly onDrawing: (ladder: Ladder | null) => void;
}

/** The live ladder of a start that is watched, with a multimeter when it is wanted. */
export function LadderWatch({ follow, onDrawing }: Props) {
  const session = useSession();
  const { meters } = useStore(session.atThePlant);
  const [metered, setMetered] = useState(() => session.meterUses().length > 0);
  const [ready, setReady] = useState(false);
  useEffect(() => {
    let alive = true;
    loadMessages(['ladder', 'bench']).then(
      () => alive && setReady(true),
      () => undefined,
    );
    return () => {
      alive = false;
    };
  }, []);
  const toggle = ready ? (
    <button
      type="button"
      className="button"
      aria-pressed={metered}
      onClick={() => {
        if (metered) session.setMeters([]);
        setMetered(!metered);
      }}
    >
      {say('ladder.meter.show')}
    </button>
  ) : null;
  if (!metered || !ready) {
    return <LadderHost follow={follow} onDrawing={onDrawing} extra={toggle} />;
  }
  const reading = (use: LeadUse): StripReading | null => {
    const found = meters.find(
      (each) => each.use.place === use.place && each.use.range === use.range,
    );
    return found?.reading ?? null;
  };
  return (
    <LadderLeads
      uses={session.meterUses()}
      onPlace={(next) => session.setMeters(next === null ? [] : [next])}
      reading={reading}
      follow={follow}
      onDrawing={onDrawing}
      extra={toggle}
    />
  );
}
