import { paceOfSeat } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';
import { useBookPart, useClass, useClassPart } from './class-context.ts';
import { errorText } from './code-words.ts';
import { useHints } from './hints-button.tsx';
import { PollPanel } from './poll-panel.tsx';

/** What the instructor says and what the class does to one's work, between strip and work. */
export function ClassNotes() {
  return (
    <div className="class-notes">
      <FrozenNote />
      <HandedInNote />
      <RefusedNote />
      <FreshHints />
      <PollPanel />
    </div>
  );
}

function FrozenNote() {
  const { place } = useClass();
  const frozen = useClassPart(
    ({ book }) =>
      book.phase === 'under way' &&
      book.way === 'own copies' &&
      paceOfSeat(book, place.seat).frozen,
  );
  const isQuiz = useClassPart(({ book }) => book.what?.kind === 'quiz');
  return (
    <div role="status">
      {frozen ? (
        <p className="class-note class-frozen">
          <PauseIcon />
          <span>
            <strong>{say('class.frozen.title')}</strong>{' '}
            {say(isQuiz ? 'class.frozen.quiz' : 'class.frozen.text')}
          </span>
        </p>
      ) : null}
    </div>
  );
}

function HandedInNote() {
  const isOver = useBookPart((book) => book.outcome !== null);
  const handedIn = useBookPart((book) => book.handedIn);
  const link = useClassPart((now) => now.link);
  if (!isOver) return <div role="status" />;
  const code = handedIn
    ? 'class.handed-in.done'
    : link === 'live'
      ? 'class.handed-in.going'
      : 'class.handed-in.waiting';
  return (
    <div role="status">
      <p className="class-note">{say(code)}</p>
    </div>
  );
}

/** The server will not have the work, and will not have it later either. */
function RefusedNote() {
  const refused = useClassPart((now) => now.workRefused);
  const phase = useClassPart((now) => now.book.phase);
  if (refused === null || phase === 'closed') return null;
  return (
    <p className="class-note class-refused" role="alert">
      <strong>{say('class.refused')}</strong> {errorText(refused)}
    </p>
  );
}

/** Each new hint, until it is put away; it stays in the list. */
function FreshHints() {
  const hints = useHints();
  const read = useBookPart((book) => book.hintsRead);
  const { book } = useClass();
  const fresh = hints.filter(({ n }) => !read.includes(n));
  return (
    <div role="status" className="class-fresh">
      {fresh.map(({ n, text }) => (
        <div key={n} className="class-note class-hint">
          <p>
            <strong>{say('class.hint.from')}</strong> {text}
          </p>
          <button
            type="button"
            className="button"
            onClick={() => book.write({ hintsRead: [...book.read().hintsRead, n] })}
          >
            {say('class.hint.good')}
          </button>
        </div>
      ))}
    </div>
  );
}

function PauseIcon() {
  return (
    <svg width="18" height="20" viewBox="0 0 14 16" aria-hidden="true" fill="currentColor">
      <path d="M1 1 h4 v14 h-4 z M9 1 h4 v14 h-4 z" />
    </svg>
  );
}
