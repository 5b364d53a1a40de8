import { useMemo } from 'react';
import { sayWord } from '../../i18n/index.ts';
import {
  type Answer,
  answerWords,
  checkWords,
  momentWords,
  partWords,
  toldWords,
} from '../../wording/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { useFacts } from '../working/session-context.tsx';
import { type DecisionLike, decisionWords, whereAndWhen } from './decision-words.ts';

/** What is said of decisions and readings, in the words of this plant and the reader's units. */
export interface Words {
  check(check: string): string;
  moment(moment: string): string;
  /** A check and when, in one. */
  checkAt(check: string, moment: string): string;
  told(told: Answer & { readonly moment: string }): string;
  answer(answer: Answer): string;
  part(part: string): string;
  way(way: string): string;
  decision(decision: DecisionLike): string;
}

export function useWords(): Words {
  const facts = useFacts();
  const { units } = useStore(settings);
  return useMemo(() => {
    const check = (name: string) => checkWords(facts, name);
    return {
      check,
      moment: momentWords,
      checkAt: (name, moment) => whereAndWhen(check(name), [moment]),
      told: (told) => toldWords(facts, told, units),
      answer: (answer) => answerWords(facts, answer, units),
      part: partWords,
      way: wayWords,
      decision: (decision) => decisionWords(decision, check, wayWords),
    };
  }, [facts, units]);
}

function wayWords(way: string): string {
  return way === 'adjust' ? sayWord('debrief.way', way) : sayWord('job.way', way);
}
