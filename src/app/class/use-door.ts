import { useRef, useState } from 'react';
import type { AtTheDoor } from '../../classroom/client/index.ts';
import { errorText } from './code-words.ts';

type In = Extract<AtTheDoor, { ok: true }>;

export interface Door {
  readonly isAsking: boolean;
  /** Why one was not let in; empty where nothing went wrong. */
  readonly trouble: string;
  ask(knock: () => Promise<AtTheDoor>): void;
}

/** Knocks once at a time. */
export function useDoor(onIn: (answer: In) => void): Door {
  const [isAsking, setAsking] = useState(false);
  const [trouble, setTrouble] = useState('');
  const asked = useRef(false);
  return {
    isAsking,
    trouble,
    ask(knock) {
      if (asked.current) return;
      asked.current = true;
      setAsking(true);
      setTrouble('');
      void knock().then((answer) => {
        asked.current = false;
        setAsking(false);
        if (answer.ok) onIn(answer);
        else setTrouble(errorText(answer.error));
      });
    },
  };
}
