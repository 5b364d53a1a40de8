import { useEffect, useRef, useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import type { ItemCard, ItemKind } from '../../quiz/index.ts';
import { plantTitle } from '../library/exercises.ts';
import { loadBank } from '../quiz/load-bank.ts';
import { askForItem } from '../quiz-item/item-maker.ts';
import { settings } from '../settings/settings.ts';
import { DraftView } from './draft-view.tsx';
import { draftOfItem, type PollDraft } from './poll-draft.ts';

/** Those that are answered by choosing one of a few options. */
const KINDS = [
  'cause',
  'next check',
  'ruled out',
  'what follows',
  'conduct',
] as const satisfies readonly ItemKind[];

type Now =
  | { readonly is: 'none' | 'making' | 'failed' | 'no bank' }
  | { readonly is: 'made'; readonly draft: PollDraft };

/** A proved question of the bank, by kind and plant; another one as often as wanted. */
export function BankQuestion({ onAsk }: { readonly onAsk: (draft: PollDraft) => void }) {
  const [cards, setCards] = useState<readonly ItemCard[]>([]);
  const [kind, setKind] = useState<ItemKind>('cause');
  const [plant, setPlant] = useState('');
  const [now, setNow] = useState<Now>({ is: 'none' });
  const turn = useRef(0);
  useEffect(() => {
    loadBank().then(setCards, () => setNow({ is: 'no bank' }));
  }, []);
  const fitting = cards.filter(
    (card) => card.kind === kind && card.place !== null && (plant === '' || card.plant === plant),
  );
  const bring = async () => {
    const card = fitting[turn.current % Math.max(1, fitting.length)];
    turn.current += 1;
    if (card === undefined) return;
    const own = turn.current;
    setNow({ is: 'making' });
    const asked = await askForItem(card.id);
    if (own !== turn.current) return;
    const draft = asked.ok
      ? draftOfItem(asked.item, asked.names, asked.start, settings.read().units)
      : null;
    setNow(draft === null ? { is: 'failed' } : { is: 'made', draft });
  };
  const plants = [...new Set(cards.map((card) => card.plant))].filter((id) => id !== '').sort();
  return (
    <div className="poll-making">
      <div className="poll-fields">
        <label className="field">
          <span>{say('teach-poll.bank.kind')}</span>
          <select value={kind} onChange={({ target }) => setKind(target.value as ItemKind)}>
            {KINDS.map((one) => (
              <option key={one} value={one}>
                {sayWord('quiz.kind', one)}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>{say('teach-poll.bank.plant')}</span>
          <select value={plant} onChange={({ target }) => setPlant(target.value)}>
            <option value="">{say('teach-poll.bank.any-plant')}</option>
            {plants.map((id) => (
              <option key={id} value={id}>
                {plantTitle(id)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <button
        type="button"
        className="button"
        disabled={fitting.length === 0}
        aria-disabled={now.is === 'making'}
        onClick={() => void bring()}
      >
        {say(now.is === 'made' ? 'teach-poll.bank.another' : 'teach-poll.bank.bring')}
      </button>
      <p role="status" className={now.is === 'making' ? 'quiet' : 'invalid'}>
        {now.is === 'none' || now.is === 'made' ? '' : say(`teach-poll.bank.${now.is}`)}
      </p>
      {now.is === 'made' ? <DraftView draft={now.draft} onAsk={onAsk} /> : null}
    </div>
  );
}
