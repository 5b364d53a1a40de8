import { difficultyOfLevel, type Rating, spreadOf } from '../../diagnosis/mastery/index.ts';
import { say } from '../../i18n/index.ts';

/** Ends of the bar, half a level beyond the levels of jobs; log-odds. */
const LOW = difficultyOfLevel(0.25);
const HIGH = difficultyOfLevel(5.75);
const LEVELS = [1, 2, 3, 4, 5] as const;
const WIDTH = 220;
const HEIGHT = 16;

/** Where one may stand among the levels of jobs: a stretch, never a point. Told in words elsewhere. */
export function SkillBar({ rating }: { readonly rating: Rating | null }) {
  const [low, high] = rating === null ? [0, 0] : [edge(rating, -1), edge(rating, 1)];
  return (
    <svg
      className="skill-bar"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <path className="skill-bar-track" data-known={rating !== null} d={`M0 8H${WIDTH}`} />
      {rating === null ? null : (
        <rect className="skill-bar-stretch" x={low} y="3" width={high - low} height="10" rx="3" />
      )}
      {LEVELS.map((level) => {
        const x = place(difficultyOfLevel(level));
        return <path key={level} className="skill-bar-level" d={`M${x} 2V14`} />;
      })}
      {rating === null ? null : (
        <path className="skill-bar-mark" d={`M${place(rating.value)} 0V16`} />
      )}
    </svg>
  );
}

/** The same stretch in words: levels of jobs, to the nearest. */
export function reachWords(rating: Rating): string {
  const level = (value: number) => {
    const nearest = Math.round(value - difficultyOfLevel(0));
    if (nearest < 1) return say('learner.reach.below');
    if (nearest > 5) return say('learner.reach.above');
    return `${nearest}`;
  };
  const spread = spreadOf(rating);
  const low = level(rating.value - spread);
  const high = level(rating.value + spread);
  return low === high ? low : say('learner.reach', { low, high });
}

function edge(rating: Rating, side: -1 | 1): number {
  return place(rating.value + side * spreadOf(rating));
}

function place(value: number): number {
  const share = (value - LOW) / (HIGH - LOW);
  return Math.round(WIDTH * Math.min(1, Math.max(0, share)));
}
