import { type ReactNode, useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Session } from '../session/session-types.ts';
import { Announcer } from '../working/announcer.tsx';
import { HelpDialog } from '../working/help-dialog.tsx';
import { RefusalNote } from '../working/refusal-note.tsx';
import { useSessionPart } from '../working/session-context.tsx';
import { useShortcuts } from '../working/shortcuts.ts';
import { WorkingHeader } from '../working/working-header.tsx';
import { Notices } from './notices.tsx';

interface Props {
  readonly session: Session;
  readonly kind: 'job' | 'drill' | 'lesson' | 'replay';
  /** Only looked at: time is not run on. */
  readonly still?: boolean;
  /** What has to be said all the time. */
  readonly note?: ReactNode;
  readonly children: ReactNode;
}

/** The working page around an exercise: header, what went wrong, help. */
export function WorkFrame({ session, kind, still = false, note = null, children }: Props) {
  const [help, setHelp] = useState(false);
  const ways = useMemo(() => ({ onHelp: () => setHelp(true), onFaults: () => undefined }), []);
  useShortcuts(session, ways);
  return (
    <div className="working at-work" data-kind={kind} data-projector={false} data-bench="open">
      <WorkingHeader projector={false} still={still} onHelp={ways.onHelp} />
      <Announcer />
      <div className="frame-notes">
        {note}
        <RefusalNote />
        <Notices />
      </div>
      <WhenOpen>{children}</WhenOpen>
      {help ? <HelpDialog onClose={() => setHelp(false)} /> : null}
    </div>
  );
}

function WhenOpen({ children }: { readonly children: ReactNode }) {
  const phase = useSessionPart((state) => state.phase);
  if (phase === 'open') return children;
  return phase === 'opening' ? <p className="loading">{say('app.opening')}</p> : null;
}
