import '../styles/job/forms.css';
import '../styles/paper.css';
import '../styles/package.css';
import { useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { ItemCard } from '../../quiz/index.ts';
import { composePaper, type PaperChoice } from '../../records/index.ts';
import type { Packaged } from '../../records/lms/index.ts';
import { quizPackageWords } from '../../wording/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { CountingChoice, masteryOf, USUAL_COUNTING } from './counting-choice.tsx';
import { ExerciseChoice, type PackableKind, packables } from './exercise-choice.tsx';
import { MakingPackage } from './making-package.tsx';
import { type QuizMode, QuizPart } from './quiz-part.tsx';
import { Segments } from './segments.tsx';
import { usePackage } from './use-package.ts';

const WHAT = ['job', 'drill', 'lesson', 'quiz'] as const;
const MOST_TITLE = 200;

/** One exercise and the whole page as a file for a learning system. */
export function PackagePage() {
  const [what, setWhat] = useState<(typeof WHAT)[number]>('job');
  const [counting, setCounting] = useState(USUAL_COUNTING);
  const [ids, setIds] = useState<Readonly<Record<string, string>>>({});
  /** Null until someone writes one. */
  const [title, setTitle] = useState<string | null>(null);
  const [isEmpty, setEmpty] = useState(false);
  const { now, make } = usePackage();
  const button = useRef<HTMLButtonElement>(null);
  const isMaking = now.is === 'fetching' || now.is === 'packing';
  const mastery = masteryOf(counting);
  const chosen = what === 'quiz' ? null : chosenOf(what, ids[what]);
  const said = title ?? chosen?.title ?? '';
  // A quiz has a title by its number where none is written.
  const isTitled = said.trim() !== '' || (what === 'quiz' && title === null);

  const put = (exercise: Packaged['exercise'], named: string, about: string): void => {
    if (isMaking || mastery === undefined || !isTitled) return;
    const { form, xapi } = counting;
    const wish = { form, xapi, mastery, exercise, title: (title ?? named).trim() };
    void make(wish, about);
  };
  const putQuiz = (choice: PaperChoice, cards: readonly ItemCard[], mode: QuizMode): void => {
    const items = [...composePaper(choice, cards)];
    setEmpty(items.length === 0);
    if (items.length === 0) return;
    const words = quizPackageWords(choice.number, items.length);
    put({ kind: 'quiz', mode, items }, words.title, words.about);
  };
  return (
    <FrontFrame>
      <div className="paper-page package-page">
        <a className="back" href={hrefOf({ page: 'teach' })}>
          ← {say('app.teach.title')}
        </a>
        <PageHeading>{say('app.teach.package')}</PageHeading>
        <p className="front-lead">{say('package.lead')}</p>
        <Segments
          legend={say('package.what')}
          all={WHAT}
          chosen={what}
          nameOf={(one) => say(`package.what.${one}`)}
          onChoose={(one) => {
            setWhat(one);
            setTitle(null);
            setEmpty(false);
          }}
        />
        {what === 'quiz' ? null : (
          <ExerciseChoice
            kind={what}
            chosen={chosen}
            onChoose={(id) => {
              setIds({ ...ids, [what]: id });
              setTitle(null);
            }}
          />
        )}
        <CountingChoice counting={counting} onChange={setCounting} />
        {what === 'quiz' ? (
          <QuizPart isMaking={isMaking} button={button} onMake={putQuiz} />
        ) : (
          <>
            <div>
              <label className="field package-title">
                <span>{say('package.title')}</span>
                <input
                  value={said}
                  maxLength={MOST_TITLE}
                  aria-invalid={!isTitled}
                  aria-describedby="package-title-wrong"
                  onChange={({ target }) => setTitle(target.value)}
                />
              </label>
              <p className="invalid" id="package-title-wrong" role="status">
                {isTitled ? '' : say('package.title.wrong')}
              </p>
            </div>
            <button
              type="button"
              ref={button}
              className="button primary"
              disabled={mastery === undefined || !isTitled || chosen === null}
              aria-disabled={isMaking}
              onClick={() => {
                if (chosen === null) return;
                put({ kind: chosen.kind, id: chosen.id }, chosen.title, chosen.about);
              }}
            >
              {say('package.make')}
            </button>
          </>
        )}
        {isEmpty ? (
          <p className="invalid" role="status">
            {say('quiz.paper.none')}
          </p>
        ) : null}
        <MakingPackage now={now} />
      </div>
    </FrontFrame>
  );
}

/** The first one until another is chosen. */
function chosenOf(kind: PackableKind, id: string | undefined) {
  const all = packables(kind).flatMap((group) => group.all);
  return all.find((each) => each.id === id) ?? all[0] ?? null;
}
