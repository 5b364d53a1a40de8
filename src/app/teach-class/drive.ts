/** How runs of the class are driven: all own copies through entries, the one plant by its session. */
import type { ClassPace, ClassTo } from '../../../machines/class/index.ts';
import type { Spoken } from '../../classroom/index.ts';
import type { Action } from '../../engine/index.ts';
import type { Session } from '../session/session-types.ts';
import { anyId } from './any-id.ts';
import type { Saying } from './saying.ts';

export interface Drive {
  freeze(): void;
  run(speed: ClassPace['speed']): void;
  nextStep(): void;
  /** Simulated seconds back from where each run stands. */
  backBy(seconds: number): void;
  /** To a moment of the run. */
  backTo(tS: number): void;
  /** @param step when a run enters it; null: now */
  act(acts: readonly Action[], step: string | null): void;
}

type RunEntry = Extract<Spoken, { type: 'run' }>;

/** @param targets asked at each act, so that it goes to those who are chosen then */
export function driveApart(say: Saying, targets: () => readonly ClassTo[]): Drive {
  const each = (make: (to: ClassTo) => Spoken) => {
    void say(...targets().map(make));
  };
  return {
    freeze: () => each((to) => ({ type: 'freeze', to })),
    run: (speed) => each((to) => ({ type: 'run', to, speed: speed as RunEntry['speed'] })),
    nextStep: () => each((to) => ({ type: 'next step', to })),
    backBy: (byS) => each((to) => ({ type: 'rewind by', to, byS })),
    backTo: (toS) => each((to) => ({ type: 'rewind', to, toS })),
    act(acts, step) {
      each((to) =>
        step === null
          ? { type: 'do', to, acts: [...acts] }
          : { type: 'when', id: anyId(), to, step, acts: [...acts] },
      );
    },
  };
}

/** @param session the leading one; null while it is being opened: then nothing moves */
export function driveTogether(say: Saying, session: () => Session | null): Drive {
  return {
    freeze: () => session()?.pause(),
    run: (speed) => session()?.play(speed as Parameters<Session['play']>[0]),
    nextStep: () => session()?.nextStep(),
    backBy(seconds) {
      const leading = session();
      leading?.cutTo(Math.max(0, leading.store.read().shownS - seconds));
    },
    backTo: (tS) => session()?.cutTo(tS),
    act(acts, step) {
      if (step === null) for (const act of acts) session()?.order(act);
      else void say({ type: 'when', id: anyId(), to: 'all', step, acts: [...acts] });
    },
  };
}
