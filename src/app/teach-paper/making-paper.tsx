import { useEffect, useRef } from 'react';
import { say } from '../../i18n/index.ts';
import type { PaperNow } from './use-paper.ts';

interface Props {
  readonly now: PaperNow;
  readonly onStop: () => void;
}

/** How far it is, and what came of it. */
export function MakingPaper({ now, onStop }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const { is } = now;
  useEffect(() => {
    // The choices may fill the screen, and what comes of them would go unseen.
    if (is !== 'none') place.current?.scrollIntoView({ block: 'center' });
  }, [is]);
  return (
    <div className="paper-making" ref={place}>
      {now.is === 'making' ? (
        <>
          <progress max={now.of} value={now.done} aria-label={say('quiz.paper.making.label')} />
          <button type="button" className="button" onClick={onStop}>
            {say('quiz.paper.stop')}
          </button>
        </>
      ) : null}
      <p role="status" className={now.is === 'broken' ? 'invalid' : ''}>
        {statusOf(now)}
      </p>
    </div>
  );
}

function statusOf(now: PaperNow): string {
  switch (now.is) {
    case 'none':
      return '';
    case 'making':
      return say('quiz.paper.making', { done: now.done, of: now.of });
    case 'broken':
      return say('quiz.paper.broken');
    case 'made': {
      const { paper, wanted, leftOut } = now;
      const count = paper.questions.length;
      if (count === 0) return say('quiz.paper.none');
      const said = [say('quiz.paper.made', { number: paper.number, count })];
      if (leftOut.length > 0) {
        said.push(say('quiz.paper.left-out', { count: leftOut.length, ids: leftOut.join(', ') }));
      }
      if (count + leftOut.length < wanted) said.push(say('quiz.paper.fewer'));
      return said.join(' ');
    }
  }
}
