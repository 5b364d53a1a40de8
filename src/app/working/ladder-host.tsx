import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { loadMessages, say } from '../../i18n/index.ts';
import {
  type HeldLeads,
  type Ladder,
  type LadderStep,
  type LadderTag,
  loadLadder,
} from '../../view/index.ts';
import { stepAt } from '../reading/step-at.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { type LadderMeter, LadderTools } from './ladder-tools.tsx';
import { RungList } from './rung-list.tsx';
import { useFacts, useSession, useSessionPart } from './session-context.tsx';
import { useViewObject } from './use-view-object.ts';
import { viewMessage } from './view-words.ts';

interface Props {
  /** Brings the rungs of a step into view when the step begins. */
  readonly follow: boolean;
  readonly onDrawing: (ladder: Ladder | null) => void;
  /** False: as on paper, where only leads tell what is live. */
  readonly live?: boolean;
  /** The leads in use; without it the ladder takes none. */
  readonly meter?: LadderMeter | null;
  /** Other meters, and wires put across by hand. */
  readonly tags?: readonly LadderTag[];
  /** Beside the search, and beside the leads. */
  readonly extra?: ReactNode;
  readonly strip?: ReactNode;
}

/** The wiring diagram, live or as on paper, and the same rungs in words for a screen reader. */
export function LadderHost(props: Props) {
  const { follow, onDrawing, live = true, meter = null, tags = NO_TAGS, extra, strip } = props;
  const session = useSession();
  const facts = useFacts();
  const { symbols } = useStore(settings);
  const [attempt, setAttempt] = useState(0);
  const [pointed, setPointed] = useState('');
  const [words, setWords] = useState<Awaited<ReturnType<typeof loadLadder>> | null>(null);
  const revision = useSessionPart((state) => state.revision);
  const step = useLadderStep();
  const told = useRef<(leads: HeldLeads) => void>(() => undefined);
  useEffect(() => {
    told.current = meter?.onLeads ?? (() => undefined);
  }, [meter]);
  const takesLeads = meter !== null;
  const { host, object, phase, reason } = useViewObject(
    `${facts.scenario.id} ${attempt} ${live} ${takesLeads}`,
    async (element) => {
      const [ladder] = await Promise.all([loadLadder(), loadMessages(['ladder'])]);
      setWords(ladder);
      return ladder.createLadder(element, {
        wiring: facts.wiring,
        channels: facts.channels,
        message: viewMessage,
        live,
        symbols: settings.read().symbols,
        onPointed: setPointed,
        ...(takesLeads ? { onLeads: (leads) => told.current(leads) } : {}),
      });
    },
    (ladder) => session.onMoment(({ next }) => ladder.showFrame(next)),
  );
  useEffect(() => {
    onDrawing(object);
    return () => onDrawing(null);
  }, [object, onDrawing]);
  useEffect(() => object?.setStep(step, follow), [object, step, follow]);
  useEffect(() => object?.setSymbols(symbols), [object, symbols]);
  useEffect(() => {
    if (meter !== null) object?.setLeads(meter.leads, meter.single);
  }, [object, meter]);
  useEffect(() => object?.setTags(tags), [object, tags]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was replaced is drawn again
  useEffect(() => session.refresh(), [session, object, revision]);
  return (
    <div className="ladder-frame">
      {object === null || words === null ? null : (
        <LadderTools
          wiring={facts.wiring}
          drawing={object}
          words={words}
          meter={meter}
          isLive={live}
          extra={extra}
          strip={strip}
        />
      )}
      {/* What scrolls must be reachable by keyboard; the arrow keys move it or walk its terminals. */}
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields of a form */}
      <div
        className="ladder"
        ref={host}
        data-phase={phase}
        role="group"
        aria-label={say('app.ladder.label', { plant: facts.plantTitle })}
        aria-description={
          takesLeads && object !== null ? say('ladder.keys.leads') : say('app.ladder.keys')
        }
        // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
        tabIndex={0}
      />
      <p className="for-readers" role="status">
        {pointed}
      </p>
      <RungList step={step} live={live} />
      {phase === 'loading' ? <p className="schematic-note">{say('app.ladder.loading')}</p> : null}
      {phase === 'failed' ? (
        <div className="schematic-note" role="alert">
          <p>{say('app.ladder.not-drawn')}</p>
          <details>
            <summary>{say('app.failure.detail')}</summary>
            {reason}
          </details>
          <p>
            <button type="button" className="button" onClick={() => setAttempt(attempt + 1)}>
              {say('app.plant.try-again')}
            </button>
          </p>
        </div>
      ) : null}
    </div>
  );
}
const NO_TAGS: readonly LadderTag[] = [];

/** What the step shown drives and waits for. */
function useLadderStep(): LadderStep {
  const facts = useFacts();
  const events = useSessionPart((state) => state.events);
  const shownS = useSessionPart((state) => state.shownS);
  const { step } = useMemo(() => stepAt(events, shownS), [events, shownS]);
  return useMemo(() => {
    const found = facts.steps.find((each) => each.step === step);
    return {
      commands: found?.drives ?? [],
      inputs: (found?.waits ?? []).map(({ input }) => input),
    };
  }, [facts, step]);
}
