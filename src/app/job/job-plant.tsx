import { useEffect, useMemo, useState } from 'react';
import type { LookWhat } from '../../engine/index.ts';
import { say } from '../../i18n/index.ts';
import type { Ladder, Schematic } from '../../view/index.ts';
import { useLockedTools } from '../class-run/locked-tools.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { LadderLeads, type LeadUse } from '../working/ladder-leads.tsx';
import { SchematicHost } from '../working/schematic-host.tsx';
import { useFacts, useSession } from '../working/session-context.tsx';
import { SoundSource } from '../working/sound-source.tsx';
import { Tabs } from '../working/tabs.tsx';
import { ZoomButtons } from '../working/zoom-buttons.tsx';
import { CloseUp } from './close-up.tsx';
import { useExercise } from './exercise-context.tsx';
import { tagWords } from './meter-line.tsx';
import { PlantList } from './plant-list.tsx';
import { placeName, pointWords } from './point-words.ts';
import type { Looking } from './use-looking.ts';

const NARROW_PX = 700;

type View = 'schematic' | 'ladder' | 'list' | 'close-up';

interface Props {
  readonly look: Surroundings;
  readonly looking: Looking;
  /** Something was looked at here: what is seen is said beside. */
  readonly onLook: () => void;
  /** A test point was picked: a tool is wanted there. */
  readonly onTestPoint: (id: string) => void;
}

/** The plant as someone standing before it has it: drawn, wired on paper, or listed. */
export function JobPlant({ look, looking, onLook, onTestPoint }: Props) {
  const [chosen, setChosen] = useState<View>(() => (innerWidth < NARROW_PX ? 'list' : 'schematic'));
  const [drawing, setDrawing] = useState<Schematic | Ladder | null>(null);
  const { seen } = looking;
  const what = seen?.what ?? null;
  // Eyes go to what is looked at, and back to the plant when they are taken off it.
  useEffect(() => {
    if (what !== null) setChosen('close-up');
    else setChosen((now) => (now === 'close-up' ? 'schematic' : now));
  }, [what]);
  const lookAt = (next: LookWhat) => {
    looking.look(next);
    onLook();
  };
  const atWork = useAtWork();
  return (
    <Tabs
      label={say('app.plant.views')}
      tabs={[
        { name: 'schematic', title: say('app.plant.schematic') },
        { name: 'ladder', title: say('app.plant.ladder') },
        { name: 'list', title: say('app.plant.list') },
        ...(seen === null ? [] : [{ name: 'close-up' as const, title: say('job.close-up') }]),
      ]}
      chosen={chosen}
      onChoose={setChosen}
      extra={
        <>
          <div className="plant-tools">
            {drawing === null ? null : <ZoomButtons drawing={drawing} />}
          </div>
          <SoundSource />
        </>
      }
    >
      {chosen === 'schematic' ? (
        <SchematicHost
          look={look}
          eyesOnly={true}
          looks={atWork.looks}
          points={atWork.points}
          tags={atWork.tags}
          onLook={lookAt}
          onTestPoint={onTestPoint}
          onList={() => setChosen('list')}
          onDrawing={setDrawing}
        />
      ) : null}
      {chosen === 'ladder' ? <JobLadder onDrawing={setDrawing} /> : null}
      {chosen === 'list' ? <PlantList onLook={lookAt} /> : null}
      {chosen === 'close-up' && seen !== null ? <CloseUp seen={seen} look={look} /> : null}
    </Tabs>
  );
}

/** What the drawing offers at its items, and what hangs there. */
function useAtWork() {
  const facts = useFacts();
  const session = useSession();
  const { meters } = useStore(session.atThePlant);
  const offered = useMemo(
    () => ({
      looks: facts.lookPlaces.map((what) => ({
        what,
        label: say('job.look.look-at', { what: placeName(what) }),
      })),
      points: facts.testPoints.flatMap(({ id, where }) =>
        'item' in where
          ? [{ id, item: where.item, label: say('job.tools.at', { place: pointWords(facts, id) }) }]
          : [],
      ),
    }),
    [facts],
  );
  const itemOf = (place: string) => offered.points.find(({ id }) => id === place)?.item;
  // Two tools at one item share a tag.
  const words = new Map<string, string[]>();
  for (const meter of meters) {
    const item = itemOf(meter.use.place);
    if (item !== undefined) words.set(item, [...(words.get(item) ?? []), tagWords(meter)]);
  }
  const hung = [...words].map(([item, texts]) => ({ item, text: texts.join(' · ') }));
  const key = JSON.stringify(hung);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the same words hang the same
  const tags = useMemo(() => hung, [key]);
  return { ...offered, tags };
}

/** Wires as on paper; only the leads of a meter tell what is live. */
function JobLadder({ onDrawing }: { readonly onDrawing: (ladder: Ladder | null) => void }) {
  const session = useSession();
  const { desk } = useExercise();
  const { meters, bench } = useStore(session.atThePlant);
  const jumpers = bench?.jumpers;
  const tags = useMemo(
    () => (jumpers ?? []).map(({ from, to }) => ({ kind: 'jumper' as const, tag: 'J', from, to })),
    [jumpers],
  );
  const locked = useLockedTools();
  const hasMeter = desk.tools.includes('multimeter') && !locked.includes('multimeter');
  return (
    <LadderLeads
      live={false}
      follow={false}
      onDrawing={onDrawing}
      uses={meters.map(({ use }) => use)}
      tags={tags}
      reading={(use) => meters.find((meter) => isAt(meter.use, use))?.reading ?? null}
      onPlace={(next, before) => {
        if (before !== null) session.disconnect(before);
        if (next !== null && hasMeter) session.connect(next);
      }}
    />
  );
}

function isAt(
  use: {
    readonly tool: string;
    readonly place: string;
    readonly other?: string | undefined;
    readonly range?: string | undefined;
  },
  { place, other, range }: LeadUse,
): boolean {
  return (
    use.tool === 'multimeter' &&
    use.place === place &&
    (use.other ?? '') === (other ?? '') &&
    (use.range ?? 'volts') === (range ?? 'volts')
  );
}
