import { say } from '../../i18n/index.ts';
import { Brand } from '../front/front-frame.tsx';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { ThemeButton } from '../settings/theme-button.tsx';
import { UnitsButton } from '../settings/units-button.tsx';
import { packagedPage } from '../shell/packaged.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { useWorkPlace } from '../work/work-place.ts';
import { clockText } from './clock-text.ts';
import { RunControls } from './run-controls.tsx';
import { useSessionPart } from './session-context.tsx';

interface Props {
  readonly projector: boolean;
  /** In place of the run's own, which may say too much. */
  readonly title?: string | null;
  /** Only looked at: time is not run on. */
  readonly still?: boolean;
  readonly onHelp: () => void;
}

export function WorkingHeader({ projector, title = null, still = false, onHelp }: Props) {
  const ownTitle = useSessionPart((state) => state.facts?.scenario.title ?? '');
  const shown = title ?? ownTitle;
  const plant = useSessionPart((state) => state.facts?.plantTitle ?? '');
  const { isClass } = useWorkPlace();
  const door = projector ? 'teach' : 'practise';
  return (
    <header className="bar">
      <Brand />
      <div className="bar-where" title={`${plant} · ${shown}`}>
        {isClass || packagedPage() !== null ? null : (
          <>
            <a href={`#/${door}`}>{say(`app.${door}.title`)}</a> ·{' '}
          </>
        )}
        <span className="bar-plant">{plant} · </span>
        <PageHeading>{shown}</PageHeading>
      </div>
      <p className="bar-chip">{say('app.chip')}</p>
      <div className="bar-run">
        <Clock />
        {still ? null : <RunControls />}
      </div>
      <Preferences onHelp={onHelp} />
    </header>
  );
}

function Clock() {
  const shownS = useSessionPart((state) => state.shownS);
  const lookingBack = useSessionPart((state) => state.lookingBack);
  return (
    <p
      className="bar-clock"
      role="timer"
      aria-label={say('app.run.clock')}
      data-looking-back={lookingBack}
    >
      {clockText(shownS)}
    </p>
  );
}

function Preferences({ onHelp }: { readonly onHelp: () => void }) {
  const { sound } = useStore(settings);
  return (
    <div className="bar-preferences">
      <UnitsButton />
      <button
        type="button"
        className="button plain"
        aria-label={say(sound ? 'app.sound.on' : 'app.sound.off')}
        title={say(sound ? 'app.sound.on' : 'app.sound.off')}
        onClick={() => settings.write({ sound: !sound })}
      >
        <SoundIcon on={sound} />
      </button>
      <ThemeButton />
      <button
        type="button"
        className="button plain"
        aria-label={say('app.help.open')}
        title={say('app.help.open')}
        onClick={onHelp}
      >
        ?
      </button>
    </div>
  );
}

function SoundIcon({ on }: { readonly on: boolean }) {
  return (
    <svg
      width="22"
      height="22"
      viewBox="0 0 22 22"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
    >
      <path d="M3 8.5 v5 h3.5 L11 17.5 v-13 L6.5 8.5 z" fill="currentColor" />
      <path
        d={on ? 'M14.5 8 a4.5 4.5 0 0 1 0 6 M17 5.5 a8 8 0 0 1 0 11' : 'M14.5 8.5 l5 5 m0 -5 l-5 5'}
      />
    </svg>
  );
}
