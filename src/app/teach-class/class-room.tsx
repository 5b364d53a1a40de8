import { useCallback, useEffect, useState } from 'react';
import type { InstructorClient } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';
import { errorText } from '../class/code-words.ts';
import { type Store, useStore, useStorePart } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ClassHeader } from './class-header.tsx';
import { ClassStage, type Shown } from './class-stage.tsx';
import { ControlBar } from './control-bar.tsx';
import type { OwnClass } from './own-classes.ts';
import { PANELS, type PanelName } from './panels.ts';
import { TeachProvider, useTeach } from './teach-context.ts';
import { useTeachOf } from './use-teach.ts';

interface Props {
  readonly own: OwnClass;
  readonly client: InstructorClient;
  readonly surroundings: Store<Surroundings>;
}

/** The page of a class: who is in it, what runs, and everything that can be done. */
export function ClassRoom({ own, client, surroundings }: Props) {
  const teach = useTeachOf(own, client);
  const look = useStore(surroundings);
  const [panel, setPanel] = useState<PanelName | null>(null);
  const [shown, setShown] = useState<Shown>({
    is: own.way === 'together' ? 'plant' : 'board',
  });
  const shut = useCallback(() => setPanel(null), []);
  return (
    <TeachProvider value={teach}>
      <div className="teach-class" data-panel={panel === null ? 'shut' : 'open'}>
        <ClassHeader />
        <Notices />
        <main className="class-main">
          <ClassStage look={look} shown={shown} onShow={setShown} />
        </main>
        {panel === null ? null : <PanelAside key={panel} name={panel} onShut={shut} />}
        <ControlBar panel={panel} onPanel={setPanel} />
      </div>
    </TeachProvider>
  );
}

/** What was not taken, and why the class is gone where it is. */
function Notices() {
  const { client, notice } = useTeach();
  const { text } = useStore(notice);
  const gone = useStorePart(client.store, (now) => (now.link === 'gone' ? now.gone : null));
  return (
    <div className="class-notices" role="alert">
      {gone === null ? null : (
        <p>
          {say('teach-class.gone', { why: errorText(gone) })}{' '}
          <button type="button" className="button" onClick={() => location.reload()}>
            {say('teach-class.gone.again')}
          </button>
        </p>
      )}
      {text === '' ? null : (
        <p>
          {text}{' '}
          <button type="button" className="button" onClick={() => notice.write({ text: '' })}>
            {say('teach-class.notice.good')}
          </button>
        </p>
      )}
    </div>
  );
}

function PanelAside({ name, onShut }: { readonly name: PanelName; readonly onShut: () => void }) {
  const panel = PANELS.find((one) => one.name === name);
  useEffect(() => {
    const shutByKey = ({ key }: KeyboardEvent) => {
      if (key === 'Escape') onShut();
    };
    addEventListener('keydown', shutByKey);
    return () => removeEventListener('keydown', shutByKey);
  }, [onShut]);
  if (panel === undefined) return null;
  const { Content } = panel;
  return (
    <aside className="class-panel" aria-labelledby="class-panel-title">
      <div className="class-panel-head">
        <h2 id="class-panel-title">{panel.title()}</h2>
        <button
          type="button"
          className="button plain"
          aria-label={say('teach-class.shut')}
          title={say('teach-class.shut')}
          onClick={onShut}
        >
          ✕
        </button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus */}
      <section className="class-panel-body" tabIndex={0} aria-label={panel.title()}>
        <Content />
      </section>
    </aside>
  );
}
