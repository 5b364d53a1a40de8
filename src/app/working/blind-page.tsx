import { blindStart } from '../library/starts.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { WorkingPage } from './working-page.tsx';

interface Props {
  readonly number: number;
  readonly surroundings: Store<Surroundings>;
}

/** A start of which only the number is known. */
export function BlindPage({ number, surroundings }: Props) {
  return (
    <WorkingPage
      scenario={blindStart(number)}
      projector={false}
      blind={true}
      surroundings={surroundings}
    />
  );
}
