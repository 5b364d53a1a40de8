import '../styles/job/forms.css';
import '../styles/paper.css';
import '../styles/paper-sheet.css';
import { useEffect, useRef } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { useBank } from '../quiz/use-bank.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { MakingPaper } from './making-paper.tsx';
import { PaperChoices } from './paper-choices.tsx';
import { PaperMade } from './paper-made.tsx';
import { usePaper } from './use-paper.ts';

/** Questions for a class: on paper with their key, or as a file for another program. */
export function PaperPage() {
  const bank = useBank();
  const { now, make, stop } = usePaper();
  const isMaking = now.is === 'making';
  const button = useRef<HTMLButtonElement>(null);
  const wasMaking = useRef(false);
  useEffect(() => {
    // The button that stops it goes away, and may have been where the keys are.
    const isLost = document.activeElement === document.body;
    if (wasMaking.current && !isMaking && isLost) button.current?.focus({ preventScroll: true });
    wasMaking.current = isMaking;
  }, [isMaking]);
  return (
    <FrontFrame>
      <div className="paper-page">
        <a className="back" href={hrefOf({ page: 'teach' })}>
          ← {say('app.teach.title')}
        </a>
        <PageHeading>{say('app.teach.paper')}</PageHeading>
        <p className="front-lead">{say('quiz.paper.lead')}</p>
        {bank.state === 'failed' ? (
          <div className="paper-trouble" role="alert">
            <p>{say('quiz.bank.failed')}</p>
            <button type="button" className="button" onClick={bank.again}>
              {say('quiz.item.again')}
            </button>
          </div>
        ) : (
          <PaperChoices
            cards={bank.state === 'loaded' ? bank.cards : null}
            isMaking={isMaking}
            button={button}
            onMake={make}
          />
        )}
        <MakingPaper now={now} onStop={stop} />
      </div>
      {now.is === 'made' ? <PaperMade paper={now.paper} /> : null}
    </FrontFrame>
  );
}
