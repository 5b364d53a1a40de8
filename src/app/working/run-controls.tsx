import { say } from '../../i18n/index.ts';
import { SPEEDS } from '../session/protocol.ts';
import { useSession, useSessionPart } from './session-context.tsx';

const BACK_S = 10;

/** Back, pause, speed and the next step; after a rewind they run on from the moment shown. */
export function RunControls() {
  const session = useSession();
  const mode = useSessionPart((state) => state.status?.mode ?? 'paused');
  const speed = useSessionPart((state) => state.status?.speed ?? 1);
  const open = useSessionPart((state) => state.phase === 'open');
  return (
    <fieldset className="segments" aria-label={say('app.run.controls')} disabled={!open}>
      <button
        type="button"
        className="button"
        aria-label={say('app.run.back', { seconds: BACK_S })}
        title={say('app.run.back', { seconds: BACK_S })}
        onClick={() => {
          session.scrub(session.store.read().shownS - BACK_S);
          session.settle();
        }}
      >
        −{BACK_S} s
      </button>
      <button
        type="button"
        className="button"
        aria-pressed={mode === 'paused'}
        onClick={() => (mode === 'paused' ? session.play() : session.pause())}
        aria-label={say('app.run.pause')}
        title={say(mode === 'paused' ? 'app.run.run-on' : 'app.run.pause')}
      >
        <svg width="14" height="16" viewBox="0 0 14 16" aria-hidden="true" fill="currentColor">
          <path d="M1 1 h4 v14 h-4 z M9 1 h4 v14 h-4 z" />
        </svg>
      </button>
      {SPEEDS.map((each) => (
        <button
          key={each}
          type="button"
          className="button"
          aria-pressed={mode === 'playing' && speed === each}
          aria-label={say('app.run.speed', { speed: each })}
          onClick={() => session.play(each)}
        >
          {each}×
        </button>
      ))}
      <button
        type="button"
        className="button"
        aria-pressed={mode === 'to next step'}
        onClick={() => session.nextStep()}
      >
        {say('app.run.next-step')}
      </button>
    </fieldset>
  );
}
