import { say } from '../../i18n/index.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { BladeDrawing, ChartDrawing, TickDrawing } from './door-drawings.tsx';
import { FrontFrame } from './front-frame.tsx';

export function FrontPage() {
  return (
    <FrontFrame>
      <PageHeading>{say('app.front.title')}</PageHeading>
      <p className="front-lead">{say('app.front.lead')}</p>
      <nav className="doors" aria-label={say('app.front.doors')}>
        <a className="door" href="#/practise">
          <BladeDrawing />
          <h2>{say('app.practise.title')}</h2>
          <p>{say('app.practise.door')}</p>
          <span className="door-go">{say('app.practise.go')} →</span>
        </a>
        <a className="door" href="#/teach">
          <ChartDrawing />
          <h2>{say('app.teach.title')}</h2>
          <p>{say('app.teach.door')}</p>
          <span className="door-go">{say('app.teach.go')} →</span>
        </a>
        <a className="door" href="#/quiz">
          <TickDrawing />
          <h2>{say('app.quiz.title')}</h2>
          <p>{say('app.quiz.door')}</p>
          <span className="door-go">{say('app.quiz.go')} →</span>
        </a>
      </nav>
      <p className="front-join">
        {say('app.join.lead')}{' '}
        <a className="button" href={hrefOf({ page: 'join', code: '' })}>
          {say('app.join.title')}
        </a>
      </p>
    </FrontFrame>
  );
}
