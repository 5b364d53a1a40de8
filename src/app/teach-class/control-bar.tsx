import { CLASS_SPEEDS } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';
import { BackMenu } from './back-menu.tsx';
import { PANELS, type PanelName } from './panels.ts';
import { useBook, useTeach } from './teach-context.ts';
import { usePace } from './use-pace.ts';
import { WhoChip } from './who-chip.tsx';

interface Props {
  readonly panel: PanelName | null;
  readonly onPanel: (panel: PanelName | null) => void;
}

/** What an instructor does to the class: how runs go, and what else can be done, panel by panel. */
export function ControlBar({ panel, onPanel }: Props) {
  const { own } = useTeach();
  const { phase } = useBook();
  return (
    <section className="class-controls" aria-label={say('teach-class.controls')}>
      {own.way === 'own copies' ? <WhoChip /> : null}
      {own.kind === 'quiz' ? null : <RunButtons disabled={phase !== 'under way'} />}
      <div className="panel-buttons">
        {PANELS.filter(({ suits }) => suits(own)).map(({ name, title, short }) => (
          <button
            key={name}
            type="button"
            className="button"
            aria-pressed={panel === name}
            title={title()}
            onClick={() => onPanel(panel === name ? null : name)}
          >
            {short()}
          </button>
        ))}
      </div>
    </section>
  );
}

function RunButtons({ disabled }: { readonly disabled: boolean }) {
  const { drive } = useTeach();
  const { frozen, speed, alike } = usePace();
  return (
    <fieldset className="run-buttons" disabled={disabled} aria-label={say('teach-class.run')}>
      <div className="segments">
        <button
          type="button"
          className="button"
          aria-pressed={alike && frozen}
          onClick={() => drive.freeze()}
        >
          {say('teach-class.freeze')}
        </button>
        <button
          type="button"
          className="button"
          aria-pressed={alike && !frozen}
          onClick={() => drive.run(speed)}
        >
          {say('teach-class.run-on')}
        </button>
      </div>
      <label className="speed-choice">
        <span className="for-readers">{say('teach-class.speed')}</span>
        <select value={speed} onChange={({ target }) => drive.run(Number(target.value))}>
          {CLASS_SPEEDS.map((each) => (
            <option key={each} value={each}>
              {each}×
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="button" onClick={() => drive.nextStep()}>
        {say('teach-class.next-step')}
      </button>
      <BackMenu />
    </fieldset>
  );
}
