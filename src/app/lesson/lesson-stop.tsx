import { type ReactNode, useEffect, useRef } from 'react';
import { say } from '../../i18n/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { OptionList } from '../job/option-list.tsx';
import type { Lesson } from '../library/exercises.ts';
import { BreakIt } from './break-it.tsx';
import { useStops } from './use-stops.ts';

/** What the lesson has to say at this stop, what it asks, and the ways on. */
export function LessonStop({ lesson }: { readonly lesson: Lesson }) {
  const { desk, take } = useExercise();
  const { runOn } = useStops(lesson);
  const stop = lesson.steps[desk.stops - 1];
  const count = lesson.steps.length;
  if (desk.phase === 'outro') {
    return (
      <Box title={say('job.phase.outro')}>
        <p>{lesson.outro}</p>
        <button type="button" className="button primary" onClick={() => take({ type: 'close' })}>
          {say('lesson.close')}
        </button>
      </Box>
    );
  }
  if (desk.phase === 'run' || stop === undefined) {
    return (
      <Box title={say('lesson.stop', { n: desk.stops + 1, count })}>
        <p role="status">{say('desk.run')}</p>
        <button type="button" className="button" onClick={runOn}>
          {say('app.run.run-on')}
        </button>
      </Box>
    );
  }
  const { ask, say: more } = stop;
  const answer = desk.answers[desk.stops - 1] ?? null;
  const last = desk.stops === count;
  return (
    <Box title={say('lesson.stop', { n: desk.stops, count })}>
      {desk.phase === 'broken' ? <BreakIt stop={stop} /> : null}
      {more === undefined || desk.phase === 'broken' ? null : <p>{more}</p>}
      {ask === undefined || desk.phase === 'broken' ? null : (
        <OptionList
          question={ask.question}
          options={ask.options}
          why={ask.why}
          right={ask.right}
          answered={answer?.option ?? null}
          onAnswer={(option) => take({ type: 'answer', step: stop.step, option })}
        />
      )}
      {desk.phase === 'explain' && ask === undefined ? (
        <button
          type="button"
          className="button"
          onClick={() => take({ type: 'answer', step: stop.step, option: 0 })}
        >
          {say('lesson.understood')}
        </button>
      ) : null}
      {desk.phase === 'answered' ? <BreakIt stop={stop} /> : null}
      {desk.phase === 'answered' ? (
        <button type="button" className="button primary" onClick={() => take({ type: 'next' })}>
          {say(last ? 'lesson.end' : 'lesson.next')}
        </button>
      ) : null}
    </Box>
  );
}

function Box({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const { desk } = useExercise();
  const box = useRef<HTMLElement>(null);
  const known = useRef(`${desk.phase} ${desk.stops}`);
  // What was pressed to get on is gone: whoever works by keyboard goes on where its place was.
  useEffect(() => {
    const now = `${desk.phase} ${desk.stops}`;
    if (known.current === now) return;
    known.current = now;
    box.current?.focus({ preventScroll: true });
    if (desk.phase !== 'answered') box.current?.scrollTo(0, 0);
  }, [desk.phase, desk.stops]);
  return (
    <section
      className="lesson-box"
      aria-label={title}
      ref={box}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus
      tabIndex={0}
    >
      <h2>{title}</h2>
      {children}
    </section>
  );
}
