import { useState } from 'react';
import { heardWords } from '../../bench/index.ts';
import { say, sayMessage } from '../../i18n/index.ts';
import { useSession } from '../working/session-context.tsx';
import { letHear } from '../working/sound-source.tsx';
import { useExercise } from './exercise-context.tsx';
import { usePin } from './use-pin.ts';

/** Shares of the lower limit from which a nose has words for it. */
const SMELLS = [
  [0.2, 'strong'],
  [0.05, 'clear'],
  [0.005, 'trace'],
] as const;

/** Ears and nose: one press each, and what they found. */
export function Senses() {
  const session = useSession();
  const { desk } = useExercise();
  const pin = usePin();
  const [found, setFound] = useState<{ what: 'listen' | 'smell'; words: string } | null>(null);
  async function listen(): Promise<void> {
    session.perform({ type: 'check', what: 'listen', place: '', other: '' });
    const heard = await session.listen();
    letHear(heard);
    setFound({ what: 'listen', words: heardWords(heard).map(sayMessage).join(' ') });
  }
  async function smell(): Promise<void> {
    session.perform({ type: 'check', what: 'smell', place: '', other: '' });
    const share = await session.smell();
    const word = SMELLS.find(([from]) => share >= from)?.[1] ?? 'none';
    setFound({ what: 'smell', words: say(`job.look.smell.${word}`) });
  }
  return (
    <section aria-labelledby="senses-title">
      <h3 id="senses-title">{say('job.look.senses')}</h3>
      <div className="buttons">
        <button type="button" className="button" onClick={() => void listen()}>
          {say('job.look.listen')}
        </button>
        <button type="button" className="button" onClick={() => void smell()}>
          {say('job.look.smell')}
        </button>
      </div>
      {found === null ? null : (
        <div className="seen" role="status">
          <p>{found.words}</p>
          <button
            type="button"
            className="button"
            disabled={desk.phase === 'handover'}
            onClick={() => pin({ what: found.what, place: '', reading: found.words })}
          >
            {say(found.what === 'listen' ? 'job.look.pin-heard' : 'job.look.pin-smelt')}
          </button>
        </div>
      )}
      <p className="caution">{say('job.look.smell-caution')}</p>
    </section>
  );
}
