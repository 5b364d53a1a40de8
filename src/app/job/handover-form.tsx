import { type FormEvent, useState } from 'react';
import type { HandoverEntry } from '../../../machines/job/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { useFacts } from '../working/session-context.tsx';
import { claimedPart } from './claims.tsx';
import { useExercise } from './exercise-context.tsx';
import { pinWords } from './point-words.ts';

const FIELDS = ['cause', 'evidence', 'done', 'watch'] as const;
type Note = Omit<HandoverEntry, 'type'>;

/** What whoever comes next has to know. */
export function HandoverForm({ proved }: { readonly proved: boolean | null }) {
  const facts = useFacts();
  const { desk, take } = useExercise();
  const [refused, setRefused] = useState('');
  const [note, setNote] = useState<Note>(() => ({
    cause: desk.claims
      .map(({ part, mechanism }) => lineOf(claimedPart(part), mechanism))
      .join('\n'),
    evidence: desk.claims
      .flatMap(({ why }) => why.flatMap((place) => desk.pins[place] ?? []))
      .map((pin) => lineOf(pinWords(facts, pin), pin.reading))
      .join('\n'),
    done: '',
    watch: '',
  }));
  function sign(event: FormEvent): void {
    event.preventDefault();
    const refusal = take({ type: 'hand over', ...note });
    setRefused(refusal === null ? '' : sayWord('refusal', refusal));
  }
  return (
    <form className="work-form" onSubmit={sign} aria-label={say('job.finish.handover')}>
      <h3>{say('job.finish.handover')}</h3>
      {FIELDS.map((field) => (
        <label className="field" key={field}>
          <span>{say(`job.finish.${field}`)}</span>
          <textarea
            rows={field === 'evidence' ? 4 : 2}
            maxLength={2000}
            required={field === 'done'}
            value={note[field]}
            onChange={({ target }) => setNote({ ...note, [field]: target.value })}
          />
        </label>
      ))}
      {proved === false ? <p className="caution">{say('job.finish.unproved')}</p> : null}
      <button type="submit" className="button primary">
        {say('job.finish.do-handover')}
      </button>
      <p className="invalid" role="status">
        {refused}
      </p>
    </form>
  );
}

function lineOf(what: string, is: string): string {
  return is === '' ? what : `${what}: ${is}`;
}
