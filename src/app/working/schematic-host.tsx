import { useEffect, useRef, useState } from 'react';
import type { LookWhat } from '../../engine/index.ts';
import { say } from '../../i18n/index.ts';
import {
  type ItemTag,
  loadSchematic,
  type Schematic,
  type SchematicPoint,
} from '../../view/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import type { Surroundings } from '../settings/theme.ts';
import { plantOfLibrary } from './schematic-plant.ts';
import { useFacts, useSession, useSessionPart } from './session-context.tsx';
import { useViewObject } from './use-view-object.ts';
import { readingIn, viewMessage, vocabularyOf } from './view-words.ts';

const CONTACTOR = '.contactor';

interface Props {
  readonly look: Surroundings;
  /** As someone standing there sees it: nothing of what goes on inside. */
  readonly eyesOnly?: boolean;
  /** What can be looked at and where tools connect, offered beside the item that is picked. */
  readonly looks?: readonly { readonly what: LookWhat; readonly label: string }[];
  readonly onLook?: (what: LookWhat) => void;
  readonly points?: readonly SchematicPoint[];
  readonly onTestPoint?: (id: string) => void;
  /** What tools read, beside the items where they are. */
  readonly tags?: readonly ItemTag[];
  readonly onList: () => void;
  readonly onDrawing: (drawing: Schematic | null) => void;
}

export function SchematicHost(props: Props) {
  const { look, eyesOnly = false, looks, points, tags = NO_TAGS, onList, onDrawing } = props;
  const acts = useRef(props);
  useEffect(() => {
    acts.current = props;
  });
  const session = useSession();
  const facts = useFacts();
  const { units } = useStore(settings);
  const [attempt, setAttempt] = useState(0);
  const revision = useSessionPart((state) => state.revision);
  const { host, object, phase, reason } = useViewObject(
    `${facts.scenario.id} ${attempt}`,
    async (element) => {
      const contactor = facts.wiring.elements.findIndex(({ name }) => name.endsWith(CONTACTOR));
      const plant = { ...plantOfLibrary(facts.scenario.plant), contactorPlace: contactor };
      const { createSchematic } = await loadSchematic();
      return createSchematic(element, plant, facts.channels, {
        message: viewMessage,
        vocabulary: vocabularyOf(facts),
        reading: readingIn(units, facts),
        theme: look.theme,
        reducedMotion: look.reducedMotion,
        inside: !eyesOnly,
        ...(looks === undefined ? {} : { looks, onLook: (what) => acts.current.onLook?.(what) }),
        ...(points === undefined
          ? {}
          : { points, onTestPoint: (id) => acts.current.onTestPoint?.(id) }),
      });
    },
    (schematic) => {
      schematic.onPick((item) => schematic.focusOn(item));
      return session.onMoment(({ previous, next, blend, tS }) =>
        schematic.showFrame(previous, next, blend, tS * 1000),
      );
    },
  );
  useEffect(() => {
    onDrawing(object);
    return () => onDrawing(null);
  }, [object, onDrawing]);
  useEffect(() => object?.setTags(tags), [object, tags]);
  useEffect(() => object?.setTheme(look.theme), [object, look.theme]);
  useEffect(() => object?.setReducedMotion(look.reducedMotion), [object, look.reducedMotion]);
  useEffect(() => object?.setWords({ reading: readingIn(units, facts) }), [object, units, facts]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was replaced is drawn again
  useEffect(() => session.refresh(), [session, object, revision]);
  return (
    <>
      <div className="schematic" ref={host} data-phase={phase} />
      {phase === 'loading' ? <p className="schematic-note">{say('app.plant.loading')}</p> : null}
      {phase === 'failed' ? (
        <div className="schematic-note" role="alert">
          <p>{say('app.plant.not-drawn')}</p>
          <details>
            <summary>{say('app.failure.detail')}</summary>
            {reason}
          </details>
          <p>
            <button type="button" className="button" onClick={() => setAttempt(attempt + 1)}>
              {say('app.plant.try-again')}
            </button>{' '}
            <button type="button" className="button primary" onClick={onList}>
              {say('app.plant.list')}
            </button>
          </p>
        </div>
      ) : null}
    </>
  );
}

const NO_TAGS: readonly ItemTag[] = [];
