import { say } from '../../i18n/index.ts';
import type { ItemRun, Option } from '../../quiz/index.ts';
import type { LookedAt } from './looked-at.ts';

interface Props {
  readonly option: Option;
  /** Of the item; an option that is acted out brings its own. */
  readonly run: ItemRun | null;
  readonly what: string;
  readonly onSee: (at: LookedAt) => void;
}

/** The way to the moment on the record that shows it; nothing where none does. */
export function SeeButton({ option, run, what, onSee }: Props) {
  const { atS } = option;
  const shown = option.run ?? run;
  if (atS === null || shown === null) return null;
  return (
    <button
      type="button"
      className="button item-see"
      aria-label={say('quiz.reasons.see-of', { what })}
      onClick={() => onSee({ run: shown, atS, what })}
    >
      {say('quiz.reasons.see')}
    </button>
  );
}
