import type { Reasoning } from '../../diagnosis/index.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { takeAway } from './take-away.ts';
import { useWords } from './use-words.ts';

interface Props {
  readonly reasoning: Reasoning | null;
  readonly verdict: Verdict;
}

export function TakeAwayList({ reasoning, verdict }: Props) {
  const words = useWords();
  return (
    <ul className="take-away">
      {takeAway(reasoning, verdict, words).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
