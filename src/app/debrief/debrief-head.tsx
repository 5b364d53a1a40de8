import { say, sayWord } from '../../i18n/index.ts';
import { ConductList } from '../job/conduct-list.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { useWorkAround } from '../job/work-context.tsx';
import { useStorePart } from '../session/store.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { helpWords } from './help-words.ts';

/** When it was, with how much help; and before everything else what was unsafe. */
export function DebriefHead() {
  const { desk } = useExercise();
  return (
    <p className="front-lead debrief-facts">
      {say('debrief.facts', {
        guidance: sayWord('debrief.guidance', desk.guidance),
        date: useDateText(),
      })}{' '}
      {helpWords(desk)}
    </p>
  );
}

/** The day the work was begun on, as the reader writes it. */
export function useDateText(): string {
  const startedISO = useStorePart(useWorkAround().state, ({ record }) => record?.startedISO ?? '');
  return startedISO === ''
    ? ''
    : new Date(startedISO).toLocaleDateString(undefined, { dateStyle: 'long' });
}

export function UnsafeFirst(props: {
  readonly verdict: Pick<Verdict, 'conduct'>;
  readonly onSee: (tS: number) => void;
}) {
  const unsafe = props.verdict.conduct.filter(({ severity }) => severity === 'unsafe');
  if (unsafe.length === 0) return null;
  return (
    <section className="debrief-part gate" aria-labelledby="gate-title">
      <h2 id="gate-title">
        {say(unsafe.length === 1 ? 'debrief.gate-one' : 'debrief.gate', { count: unsafe.length })}
      </h2>
      <p>{say('debrief.gate-why')}</p>
      <ConductList findings={unsafe} onSee={props.onSee} />
    </section>
  );
}
