import { type ComponentProps, useMemo } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { numberText, quantityText } from '../../wording/index.ts';
import { canHappen, purposeText } from '../reading/plant-words.ts';
import { type StepAt, stepAt } from '../reading/step-at.ts';
import { type WaitAt, waitsAt } from '../reading/waits-at.ts';
import type { StepFacts } from '../session/protocol.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { LockoutBanner } from './lockout-banner.tsx';
import { plantOfLibrary } from './schematic-plant.ts';
import { ScrollingSection } from './scrolling-section.tsx';
import { useFacts, useSession, useSessionState } from './session-context.tsx';

/** The step the run is in at the moment shown, read from the machine's own description of it. */
interface Props {
  /** Leads to the panel's buttons; null where there is none on the page. */
  readonly onPanel: (() => void) | null;
}

export function NowPanel({ onPanel }: Props) {
  const session = useSession();
  const facts = useFacts();
  const { events, shownS } = useSessionState();
  const at = useMemo(() => stepAt(events, shownS), [events, shownS]);
  const step = facts.steps.find((each) => each.step === at.step) ?? null;
  const plant = plantOfLibrary(facts.scenario.plant);
  const frame = session.shownFrame();
  const waits = frame === null ? [] : waitsAt(facts, step, frame);
  if (isLockedOut(at)) return <LockoutBanner at={at} onPanel={onPanel} />;
  const inStepS = Math.max(0, shownS - at.sinceS);
  return (
    <ScrollingSection className="now" labelledBy="now-title" step={at.step}>
      <h2 id="now-title">{sayWord('step', at.step, '.title')}</h2>
      <p className="now-purpose">{purposeText(at.step, plant.hasPilot)}</p>
      <Waits waits={waits} hold={at.step === 'modulation'} />
      <TimeInStep step={step} inStepS={inStepS} />
    </ScrollingSection>
  );
}

function isLockedOut(at: StepAt): at is ComponentProps<typeof LockoutBanner>['at'] {
  return at.lockout !== null;
}

function Waits(props: { readonly waits: readonly WaitAt[]; readonly hold: boolean }) {
  const { waits, hold } = props;
  return (
    <div>
      <h3 id="waits-title">{say(hold ? 'app.now.must-hold' : 'app.now.waiting-for')}</h3>
      {waits.length === 0 ? (
        <p className="now-nothing">{say('app.now.waiting-for-nothing')}</p>
      ) : (
        <ul className="waits" aria-labelledby="waits-title">
          {waits.map((wait) => (
            <Wait key={wait.input} wait={wait} />
          ))}
        </ul>
      )}
    </div>
  );
}

function Wait({ wait }: { readonly wait: WaitAt }) {
  const { units } = useStore(settings);
  const code = wait.wanted ? '' : '.not';
  return (
    <li data-wait={wait.input} data-met={wait.met}>
      <MetMark met={wait.met} />
      <span>{sayWord('input', wait.input, code)}</span>
      <span className="wait-reading">{readingText(wait, units)}</span>
    </li>
  );
}

export function readingText(wait: WaitAt, units: 'SI' | 'US'): string {
  if (wait.value === null) return '';
  if (wait.limit === null) return quantityText(wait.value, wait.kind, units);
  if (wait.kind === 'share' && wait.limit === 0) {
    return say('app.now.reading.open', { value: quantityText(wait.value, wait.kind, units) });
  }
  return say(`app.now.reading.${wordOf(wait, wait.value, wait.limit)}`, {
    value: numberText(wait.value, wait.kind, units),
    limit: quantityText(wait.limit, wait.kind, units),
  });
}

/**
 * How a reading stands to its limit, as the numbers are: a proof can be missing although its
 * reading is right, or hold within the switch's differential. A step may also wait for the
 * opposite of what is proved.
 */
function wordOf(wait: WaitAt, value: number, limit: number): ReadingWord {
  const { sense, wanted, met } = wait;
  if (sense === 'at' || sense === 'made') return 'of';
  const wantsAbove = (sense === 'above') === wanted;
  const isAbove = value > limit;
  if (isAbove === wantsAbove) return isAbove ? 'over' : 'under';
  if (met) return 'beside';
  return wantsAbove ? 'of' : 'to-be-under';
}
type ReadingWord = 'over' | 'under' | 'of' | 'beside' | 'to-be-under';

function MetMark({ met }: { readonly met: boolean }) {
  return (
    <span className="mark" data-met={met}>
      <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true" fill="none">
        {met ? (
          <>
            <circle cx="11" cy="11" r="9.5" fill="var(--good)" />
            <path
              d="M6.5 11.5 l3 3 l6 -7"
              stroke="var(--on-good)"
              strokeWidth="2.4"
              strokeLinecap="round"
              strokeLinejoin="round"
            />
          </>
        ) : (
          <circle
            cx="11"
            cy="11"
            r="8.5"
            stroke="var(--wrong)"
            strokeWidth="2.2"
            strokeDasharray="4 2.7"
          />
        )}
      </svg>
      <span className="for-readers">{say(met ? 'app.now.met' : 'app.now.not-met')}</span>
    </span>
  );
}

function TimeInStep(props: { readonly step: StepFacts | null; readonly inStepS: number }) {
  const { step, inStepS } = props;
  const facts = useFacts();
  const { limitS, fails } = limitNow(step, inStepS);
  const causes = (step?.failsAs ?? []).filter((cause) => canHappen(cause, facts));
  const seconds = inStepS.toFixed(1);
  return (
    <div className="now-time">
      <p className="now-time-line">
        <span>{say('app.now.time-in-step')}</span>
        <strong>
          {limitS === null
            ? say('app.now.seconds', { seconds })
            : say(fails ? 'app.now.seconds-of-limit' : 'app.now.seconds-of-lasts', {
                seconds,
                limit: limitS,
              })}
        </strong>
      </p>
      {limitS === null ? null : (
        <div className="now-bar" aria-hidden="true">
          <span style={{ width: `${Math.min(100, (inStepS / limitS) * 100)}%` }} />
        </div>
      )}
      {causes.length === 0 ? null : (
        <p className="now-fails">
          {say('app.now.fails-as', {
            causes: causes.map((cause) => sayWord('cause', cause).toLowerCase()).join('; '),
          })}
        </p>
      )}
    </div>
  );
}

/** First the time a step lasts, if it has one; once that is over, the time it may not pass. */
function limitNow(step: StepFacts | null, inStepS: number) {
  const lastsS = step?.lastsS ?? null;
  const failLimitS = step?.failLimitS ?? null;
  if (lastsS !== null && (inStepS <= lastsS || failLimitS === null))
    return { limitS: lastsS, fails: false };
  return { limitS: failLimitS, fails: true };
}
