import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Ladder, Schematic } from '../../view/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { EquipmentList } from './equipment-list.tsx';
import { LadderWatch } from './ladder-watch.tsx';
import { SchematicHost } from './schematic-host.tsx';
import { SoundSource } from './sound-source.tsx';
import { Tabs } from './tabs.tsx';
import { ZoomButtons } from './zoom-buttons.tsx';

/** Where a drawing of the whole plant would be too small to read. */
const NARROW_PX = 700;

interface Props {
  readonly look: Surroundings;
  readonly trends: boolean;
  readonly onTrends: () => void;
}
type View = 'schematic' | 'ladder' | 'list';

/** The plant, drawn, wired or listed; what is not looked at is taken down. */
export function PlantPane({ look, trends, onTrends }: Props) {
  const [chosen, setChosen] = useState<View>(() => (innerWidth < NARROW_PX ? 'list' : 'schematic'));
  const [drawing, setDrawing] = useState<Schematic | Ladder | null>(null);
  const [follow, setFollow] = useState(true);
  return (
    <Tabs
      label={say('app.plant.views')}
      tabs={[
        { name: 'schematic', title: say('app.plant.schematic') },
        { name: 'ladder', title: say('app.plant.ladder') },
        { name: 'list', title: say('app.plant.list') },
      ]}
      chosen={chosen}
      onChoose={setChosen}
      extra={
        <>
          <div className="plant-tools">
            {drawing === null ? null : <ZoomButtons drawing={drawing} />}
            <button type="button" className="button" aria-pressed={trends} onClick={onTrends}>
              {say('app.trends.title')}
            </button>
            {chosen === 'ladder' ? (
              <button
                type="button"
                className="button"
                aria-pressed={follow}
                onClick={() => setFollow(!follow)}
              >
                {say('app.ladder.follow')}
              </button>
            ) : null}
          </div>
          {chosen === 'ladder' ? <LadderKey /> : null}
          <SoundSource />
        </>
      }
    >
      {chosen === 'schematic' ? (
        <SchematicHost look={look} onList={() => setChosen('list')} onDrawing={setDrawing} />
      ) : null}
      {chosen === 'ladder' ? <LadderWatch follow={follow} onDrawing={setDrawing} /> : null}
      {chosen === 'list' ? <EquipmentList /> : null}
    </Tabs>
  );
}

function LadderKey() {
  return (
    <p className="ladder-key">
      <span className="ladder-key-live" aria-hidden="true" /> {say('app.ladder.key.live')}
      <span className="ladder-key-signal" aria-hidden="true" /> {say('app.ladder.key.signal')}
      <span className="ladder-key-step" aria-hidden="true" /> {say('app.ladder.key.step')}
    </p>
  );
}
