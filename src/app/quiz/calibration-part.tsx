import { say, slugOf } from '../../i18n/index.ts';
import { type CalibrationRow, calibrationOf, type GivenAnswer } from '../../quiz/index.ts';
import { confidenceWord } from './confidence-words.ts';
import { percentOf } from './quiz-words.ts';

/** Fewer answers than this are luck. */
const FEWEST_OF_A_ROW = 5;

interface Props {
  readonly answers: readonly GivenAnswer[];
  /** Of a whole page, or of one quiz. */
  readonly one?: boolean;
}

/** How sure someone was, and how often that was right. */
export function CalibrationPart({ answers, one = false }: Props) {
  const { rows, count, verdict } = calibrationOf(answers);
  return (
    <section className="quiz-part quiz-calibration" aria-labelledby="calibration-title">
      <h2 id="calibration-title">{say('quiz.calibration')}</h2>
      {count === 0 ? (
        <p className="choices-lead">{say('quiz.calibration.none')}</p>
      ) : (
        <>
          <ul className="quiz-scale">
            {rows.map((row) => (
              <Row key={row.confidence} row={row} />
            ))}
          </ul>
          <p>{say(`quiz.calibration.${slugOf(verdict) as VerdictSlug}`)}</p>
          {one ? null : <p className="quiet">{say('quiz.calibration.legend')}</p>}
        </>
      )}
    </section>
  );
}

function Row({ row }: { readonly row: CalibrationRow }) {
  const { confidence, count, right, share, low, high } = row;
  const apart = apartWords(row);
  return (
    <li>
      <span>
        <strong>{confidenceWord(confidence)}</strong>{' '}
        <span className="quiet">{say('quiz.sure.percent', { percent: confidence })}</span>
      </span>
      <span>
        {share === null
          ? say('quiz.calibration.no-answer')
          : say('quiz.calibration.row', { right, count, percent: percentOf(share) })}
      </span>
      <Scale confidence={confidence} share={share} low={low} high={high} />
      {apart === null ? null : <span className="quiz-scale-apart">{apart}</span>}
    </li>
  );
}

/** Where what was said lies outside of what may well be so. */
function apartWords({ confidence, count, low, high }: CalibrationRow): string | null {
  if (count < FEWEST_OF_A_ROW) return null;
  const said = confidence / 100;
  if (said > high) return say('quiz.calibration.fewer');
  return said < low ? say('quiz.calibration.more') : null;
}

/** Told in words beside it. */
function Scale({ confidence, share, low, high }: Omit<CalibrationRow, 'count' | 'right'>) {
  return (
    <svg
      className="quiz-scale-bar"
      viewBox="0 0 100 16"
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <path className="skill-bar-track" data-known={share !== null} d="M0 8H100" />
      {share === null ? null : (
        <>
          <rect
            className="skill-bar-stretch"
            x={100 * low}
            y="3"
            width={100 * (high - low)}
            height="10"
          />
          <path className="skill-bar-mark" d={`M${100 * share} 0V16`} />
        </>
      )}
      <path className="quiz-scale-said" d={`M${confidence} 0V16`} />
    </svg>
  );
}

type VerdictSlug = 'too-few-to-say' | 'too-sure' | 'about-right' | 'too-unsure';
