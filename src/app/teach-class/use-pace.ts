import { paceOfSeat } from '../../../machines/class/index.ts';
import { useBook, useChosenSeats, useTeach } from './teach-context.ts';
import { useLeading } from './use-leading.ts';

export interface PaceNow {
  readonly frozen: boolean;
  readonly speed: number;
  /** False where what is chosen goes at different paces. */
  readonly alike: boolean;
}

/** How what is chosen runs: the one plant, or the runs of the chosen seats. */
export function usePace(): PaceNow {
  const { own } = useTeach();
  const book = useBook();
  const seats = useChosenSeats();
  const leading = useLeading();
  if (own.way === 'together') return { ...leading, alike: true };
  const paces =
    seats.length === 0 ? [book.pace, ...book.paces] : seats.map((seat) => paceOfSeat(book, seat));
  const [first = book.pace, ...others] = paces;
  const alike = others.every(
    ({ frozen, speed }) => frozen === first.frozen && speed === first.speed,
  );
  return { frozen: first.frozen, speed: first.speed, alike };
}
