import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Lesson } from '../library/exercises.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartPane } from '../working/chart-pane.tsx';
import { LookBackBar } from '../working/look-back-bar.tsx';
import { NowPanel } from '../working/now-panel.tsx';
import { PlantPane } from '../working/plant-pane.tsx';
import { TrendsDrawer } from '../working/trends-drawer.tsx';
import { LessonStop } from './lesson-stop.tsx';

interface Props {
  readonly lesson: Lesson;
  readonly look: Surroundings;
}

/** The start, with what the lesson says of it beside. */
export function LessonWorking({ lesson, look }: Props) {
  const [trends, setTrends] = useState(false);
  return (
    <>
      <main className="plant">
        <PlantPane look={look} trends={trends} onTrends={() => setTrends(!trends)} />
        <LookBackBar />
        {trends ? <TrendsDrawer look={look} onClose={() => setTrends(false)} /> : null}
      </main>
      <aside className="side" aria-label={say('lesson.side')}>
        <NowPanel onPanel={null} />
        <LessonStop lesson={lesson} />
      </aside>
      <ChartPane look={look} />
    </>
  );
}
