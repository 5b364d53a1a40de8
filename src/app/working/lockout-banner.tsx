import { say, sayWord } from '../../i18n/index.ts';
import { lookText } from '../reading/plant-words.ts';
import type { StepAt } from '../reading/step-at.ts';
import { waitsAt } from '../reading/waits-at.ts';
import { frameAt, frameIndexAt } from '../session/frame-history.ts';
import { shortClock } from './clock-text.ts';
import { plantOfLibrary } from './schematic-plant.ts';
import { ScrollingSection } from './scrolling-section.tsx';
import { useFacts, useSession } from './session-context.tsx';

interface Props {
  readonly at: StepAt & { readonly lockout: NonNullable<StepAt['lockout']> };
  readonly onPanel: (() => void) | null;
}

/** What the controller knows of a lockout, and where one would look next; never the culprit. */
export function LockoutBanner({ at, onPanel }: Props) {
  const { cause, step, atS } = at.lockout;
  const plant = plantOfLibrary(useFacts().scenario.plant);
  return (
    <ScrollingSection className="lockout" labelledBy="lockout-title" step={at.step}>
      <div className="lockout-head">
        <LockoutMark />
        <div>
          <h2 id="lockout-title">{say('app.lockout.title', { cause: sayWord('cause', cause) })}</h2>
          <p className="lockout-where">
            {say('app.lockout.where', {
              step: sayWord('step', step, '.title').toLowerCase(),
              time: shortClock(atS),
            })}
          </p>
        </div>
      </div>
      <p>{sayWord('cause', cause, '.seen')}</p>
      <WaitedFor step={step} atS={atS} />
      <p>
        <strong>{say('app.lockout.look')}</strong> {lookText(cause, plant)}
      </p>
      <p className="lockout-where">
        {say('app.lockout.reset')}
        {at.resets > 0 ? ` ${say('app.lockout.resets', { count: at.resets })}` : ''}
      </p>
      {onPanel === null ? null : (
        <p>
          <button type="button" className="button" onClick={onPanel}>
            {say('app.lockout.to-panel')}
          </button>
        </p>
      )}
    </ScrollingSection>
  );
}

function WaitedFor({ step, atS }: { readonly step: string; readonly atS: number }) {
  const session = useSession();
  const facts = useFacts();
  const history = session.history();
  if (history === null) return null;
  const before = frameAt(history, frameIndexAt(history, Math.max(0, atS - history.frameS / 2)));
  const described = facts.steps.find((each) => each.step === step) ?? null;
  if (before === null || described === null) return null;
  const missing = waitsAt(facts, described, before).filter((wait) => !wait.met);
  if (missing.length === 0) return null;
  return (
    <p>
      {say('app.lockout.waited', {
        what: missing
          .map((wait) => sayWord('input', wait.input, wait.wanted ? '' : '.not'))
          .join(', '),
      })}
    </p>
  );
}

function LockoutMark() {
  return (
    <svg className="lockout-mark" width="36" height="36" viewBox="0 0 36 36" aria-hidden="true">
      <path d="M12 3 h12 l9 9 v12 l-9 9 h-12 l-9 -9 v-12 z" fill="var(--wrong)" />
      <path
        d="M18 9 v11 M18 24.5 v2.5"
        stroke="var(--panel)"
        strokeWidth="3.4"
        strokeLinecap="round"
      />
    </svg>
  );
}
