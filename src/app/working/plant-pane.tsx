import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Schematic } from '../../view/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { EquipmentList } from './equipment-list.tsx';
import { SchematicHost } from './schematic-host.tsx';
import { SoundSource } from './sound-source.tsx';
import { Tabs } from './tabs.tsx';

/** Where a drawing of the whole plant would be too small to read. */
const NARROW_PX = 700;
const CLOSER = 1.4;

interface Props {
  readonly look: Surroundings;
  readonly trends: boolean;
  readonly onTrends: () => void;
}

/** The plant, drawn or listed; the drawing is taken down while the list stands. */
export function PlantPane({ look, trends, onTrends }: Props) {
  const [chosen, setChosen] = useState<'schematic' | 'list'>(() =>
    innerWidth < NARROW_PX ? 'list' : 'schematic',
  );
  const [drawing, setDrawing] = useState<Schematic | null>(null);
  return (
    <Tabs
      label={say('app.plant.views')}
      tabs={[
        { name: 'schematic', title: say('app.plant.schematic') },
        { name: 'list', title: say('app.plant.list') },
      ]}
      chosen={chosen}
      onChoose={setChosen}
      extra={
        <>
          <div className="plant-tools">
            {drawing === null ? null : (
              <>
                <ZoomButton sign="+" word="closer" onZoom={() => drawing.zoomBy(CLOSER)} />
                <ZoomButton sign="−" word="further" onZoom={() => drawing.zoomBy(1 / CLOSER)} />
              </>
            )}
            <button type="button" className="button" aria-pressed={trends} onClick={onTrends}>
              {say('app.trends.title')}
            </button>
          </div>
          <SoundSource />
        </>
      }
    >
      {chosen === 'schematic' ? (
        <SchematicHost look={look} onList={() => setChosen('list')} onDrawing={setDrawing} />
      ) : (
        <EquipmentList />
      )}
    </Tabs>
  );
}

function ZoomButton(props: {
  readonly sign: string;
  readonly word: 'closer' | 'further';
  readonly onZoom: () => void;
}) {
  const label = say(`app.plant.${props.word}`);
  return (
    <button
      type="button"
      className="button zoom"
      aria-label={label}
      title={label}
      onClick={props.onZoom}
    >
      {props.sign}
    </button>
  );
}
