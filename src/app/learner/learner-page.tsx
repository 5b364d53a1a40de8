import '../styles/job/practise.css';
import '../styles/learner.css';
import { useState } from 'react';
import type { Skill } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { concerns } from './learner-map.ts';
import { NextList } from './next-list.tsx';
import { ResultHistory } from './result-history.tsx';
import { ResultsFile } from './results-file.tsx';
import { SkillDetail } from './skill-detail.tsx';
import { SkillMap } from './skill-map.tsx';
import { SkillTable } from './skill-table.tsx';
import { skillName } from './skill-words.ts';
import { useLearnerMap } from './use-learner-map.ts';

const VIEWS = ['map', 'table'] as const;

/** How far one is, skill by skill, and what to practise next; all of it of this device alone. */
export function LearnerPage() {
  const learner = useLearnerMap();
  const { map, kept } = learner;
  const [view, setView] = useState<(typeof VIEWS)[number]>('map');
  const [chosen, setChosen] = useState<Skill | null>(null);
  const one = map.skills.find(({ skill }) => skill === chosen);
  const shown =
    chosen === null ? map.history : map.history.filter((result) => concerns(result, chosen));
  return (
    <FrontFrame>
      <div className="learner">
        <a className="back" href="#/practise">
          ← {say('job.to-practise')}
        </a>
        <PageHeading>{say('learner.title')}</PageHeading>
        <p className="choices-lead">
          {say(map.history.length === 0 ? 'learner.lead-empty' : 'learner.lead')}
        </p>
        <KeptNote kept={kept} />
        <div className="learner-columns">
          <section className="learner-skills" aria-labelledby="skills-title">
            <div className="learner-head">
              <h2 id="skills-title">{say('learner.map')}</h2>
              <fieldset className="segments">
                <legend className="for-readers">{say('learner.view')}</legend>
                {VIEWS.map((each) => (
                  <button
                    key={each}
                    type="button"
                    className="button"
                    aria-pressed={each === view}
                    onClick={() => setView(each)}
                  >
                    {say(`learner.view.${each}`)}
                  </button>
                ))}
              </fieldset>
            </div>
            {view === 'map' ? (
              <SkillMap skills={map.skills} chosen={chosen} onChoose={setChosen} />
            ) : (
              <SkillTable skills={map.skills} />
            )}
          </section>
          <section className="learner-next" aria-labelledby="next-title">
            {one === undefined ? (
              <>
                <h2 id="next-title">{say('learner.next')}</h2>
                <NextList next={map.next} />
                <p>
                  {say('learner.next.quiz')}{' '}
                  <a href={hrefOf({ page: 'quiz' })}>{say('learner.next.quiz.link')}</a>
                </p>
              </>
            ) : (
              <SkillDetail one={one} onClose={() => setChosen(null)} />
            )}
          </section>
        </div>
        <section aria-labelledby="history-title">
          <h2 className="choices-title" id="history-title">
            {chosen === null
              ? say('learner.history')
              : say('learner.history.of', { skill: skillName(chosen) })}
          </h2>
          <ResultHistory key={chosen ?? ''} results={shown} />
        </section>
        <section aria-labelledby="file-title">
          <h2 className="choices-title" id="file-title">
            {say('learner.file')}
          </h2>
          <ResultsFile learner={learner} />
        </section>
      </div>
    </FrontFrame>
  );
}

function KeptNote({ kept }: { readonly kept: ReturnType<typeof useLearnerMap>['kept'] }) {
  const { trouble, aside } = kept;
  if (trouble === null && !aside) return null;
  return (
    <p className="learner-note" role="status">
      {trouble === 'newer version'
        ? say('learner.kept.newer-version')
        : say(trouble === 'broken' ? 'learner.kept.broken' : 'learner.kept.aside')}
    </p>
  );
}
