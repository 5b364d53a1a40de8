import type { CauseFound } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { answerWords, checkWords, momentWords } from '../../wording/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import type { FileDiagnosed } from './author-protocol.ts';
import type { DiagnosisNow } from './use-diagnosis.ts';

interface Props {
  readonly now: DiagnosisNow;
  /** The text is another by now. */
  readonly isOld: boolean;
  readonly onStart: () => void;
  readonly onCancel: () => void;
}

/** For the author: whether it can be told, by what way, how hard that is. */
export function DiagnosisPanel({ now, isOld, onStart, onCancel }: Props) {
  return (
    <div className="author-diagnosis">
      <div className="buttons">
        {now.is === 'asking' ? (
          <button type="button" className="button" onClick={onCancel}>
            {say('author.diagnosis.cancel')}
          </button>
        ) : (
          <button type="button" className="button" onClick={onStart}>
            {say(now.is === 'none' ? 'author.diagnosis.start' : 'author.diagnosis.again')}
          </button>
        )}
        <p role="status">
          {now.is === 'asking' ? say('author.diagnosis.asking') : ''}
          {now.is === 'cancelled' ? say('author.diagnosis.cancelled') : ''}
          {now.is === 'found' && isOld ? say('author.diagnosis.old') : ''}
        </p>
      </div>
      {now.is === 'broken' ? (
        <div className="author-trouble" role="alert">
          <p>{say('author.diagnosis.broken')}</p>
          <p className="quiet">{now.detail}</p>
        </div>
      ) : null}
      {now.is === 'found' ? <Found diagnosed={now.diagnosed} /> : null}
    </div>
  );
}

function Found({ diagnosed }: { readonly diagnosed: FileDiagnosed }) {
  if (!diagnosed.ok) {
    const { trouble, detail } = diagnosed;
    return (
      <p className="author-trouble" role="alert">
        {say(`author.diagnosis.${slug(trouble)}`, { detail })}
      </p>
    );
  }
  const { found, causes, comesAndGoes, level } = diagnosed;
  const minutes = found.minutes.toFixed(0);
  return (
    <>
      <p>
        <strong>
          {say('author.diagnosis.heading', { difficulty: found.difficulty, minutes })}
        </strong>{' '}
        {level === null || Math.abs(level - found.difficulty) < 2
          ? ''
          : say('author.diagnosis.level', { level, difficulty: found.difficulty })}
      </p>
      {comesAndGoes ? <p>{say('author.diagnosis.comes-and-goes')}</p> : null}
      {found.rounds.map((round, i) => (
        <Round
          key={String(round.cause)}
          round={round}
          number={i + 1}
          of={causes}
          diagnosed={diagnosed}
        />
      ))}
    </>
  );
}

function slug(trouble: Extract<FileDiagnosed, { ok: false }>['trouble']) {
  return trouble.replaceAll(' ', '-') as 'no-atlas' | 'atlas-not-loaded' | 'not-in-order';
}

/** More than these are counted, not named. */
const MOST_NAMED = 8;

function Round(props: {
  readonly round: CauseFound;
  readonly number: number;
  readonly of: number;
  readonly diagnosed: Extract<FileDiagnosed, { ok: true }>;
}) {
  const { round, number, of, diagnosed } = props;
  const { units } = useStore(settings);
  const { path, found, inseparable, wouldSeparate } = round;
  const { names } = diagnosed;
  const cause = causeNamed(round.cause);
  const rest = inseparable.map(causeNamed);
  const heading = of > 1 ? <h4>{say('author.diagnosis.round', { number, of, cause })}</h4> : null;
  if (round.cause !== null && inseparable.includes(null)) {
    return (
      <>
        {heading}
        <p>{say('author.diagnosis.shows-nothing', { cause, count: rest.length })}</p>
      </>
    );
  }
  return (
    <>
      {heading}
      <p>
        {path.length === 0 && found
          ? say('author.diagnosis.at-once')
          : say(number === 1 ? 'author.diagnosis.path' : 'author.diagnosis.path-on')}
      </p>
      <ol className="author-path">
        {path.map((step) => (
          <li key={`${step.check} ${step.moment}`}>
            <p>
              <strong>{checkWords(names, step.check)}</strong>
              {step.moment === 'standing' ? '' : `, ${momentWords(step.moment)}`}{' '}
              <span className="quiet">
                {say('author.diagnosis.minutes', { minutes: step.minutes.toFixed(1) })}
              </span>
            </p>
            <p>
              {say('author.diagnosis.told', {
                said: saidOf(
                  step.told.map(({ aspect, word, moment }) => ({
                    aspect,
                    said: answerWords(names, { check: step.check, aspect, word, moment }, units),
                  })),
                ),
                percent: Math.round(100 * step.share),
              })}
            </p>
          </li>
        ))}
      </ol>
      <p>{say(found ? 'author.diagnosis.found' : 'author.diagnosis.not-found')}</p>
      <p>
        {rest.length === 0
          ? say('author.diagnosis.all-told')
          : rest.length > MOST_NAMED
            ? say('author.diagnosis.not-told-many', { count: rest.length })
            : say('author.diagnosis.not-told', { faults: rest.join(', ') })}{' '}
        {rest.length === 0
          ? ''
          : wouldSeparate === null
            ? say('author.diagnosis.nothing-separates')
            : say('author.diagnosis.would-separate', {
                check: checkWords(names, wouldSeparate.check),
                moment: momentWords(wouldSeparate.moment),
              })}
      </p>
    </>
  );
}

const MOST_SAID = 3;

/** What eyes found is said in their words; numbers beside these say nothing more. */
function saidOf(told: readonly { readonly aspect: string; readonly said: string }[]): string {
  if (told.length === 0) return say('author.diagnosis.as-sound');
  const words = told.filter(({ aspect }) => aspect === 'words');
  const some = words.length > 0 ? words.slice(0, 1) : told.slice(0, MOST_SAID);
  const text = some.map(({ said }) => said.replace(/\.$/, '')).join('; ');
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function causeNamed(fault: string | null): string {
  return fault ?? say('author.diagnosis.nothing-wrong');
}
