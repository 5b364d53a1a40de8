import { say } from '../../i18n/index.ts';
import { NOBODY } from './selection.ts';
import { useChosenSeats, useTeach } from './teach-context.ts';

const MOST_NAMED = 6;

/** For whom what is done now is meant. */
export function WhoChip() {
  const { selection } = useTeach();
  const seats = useChosenSeats();
  return (
    <p className="who-chip" role="status">
      <span>{whoText(seats)}</span>
      {seats.length === 0 ? null : (
        <button
          type="button"
          className="button"
          aria-label={say('teach-class.who.clear')}
          title={say('teach-class.who.clear')}
          onClick={() => selection.write(NOBODY)}
        >
          ✕
        </button>
      )}
    </p>
  );
}

export function whoText(seats: readonly number[]): string {
  if (seats.length === 0) return say('teach-class.who.all');
  if (seats.length === 1) return say('teach-class.who.one', { seat: seats[0] ?? 0 });
  if (seats.length <= MOST_NAMED) return say('teach-class.who.some', { seats: seats.join(', ') });
  return say('teach-class.who.many', { count: seats.length });
}
