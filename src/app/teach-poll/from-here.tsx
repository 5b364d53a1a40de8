import { useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { HereTrouble } from '../session/here-protocol.ts';
import { settings } from '../settings/settings.ts';
import { askHere, type Moment } from './ask-here.ts';
import { DraftView } from './draft-view.tsx';
import { draftOfItem, type PollDraft } from './poll-draft.ts';

interface Props {
  readonly moment: () => Moment | null;
  readonly onAsk: (draft: PollDraft) => void;
}

type Now =
  | { readonly is: 'none' }
  | { readonly is: 'making' }
  | {
      readonly is: 'made';
      readonly draft: PollDraft;
      readonly shows: boolean;
      readonly inS: number;
    }
  | { readonly is: 'failed'; readonly why: HereTrouble | 'no run' };

/** "What happens next?", of the run that is looked at, at the moment that is shown. */
export function FromHere({ moment, onAsk }: Props) {
  const [now, setNow] = useState<Now>({ is: 'none' });
  const turn = useRef(0);
  const make = async () => {
    turn.current += 1;
    const own = turn.current;
    const at = moment();
    if (at === null) {
      setNow({ is: 'failed', why: 'no run' });
      return;
    }
    setNow({ is: 'making' });
    const asked = await askHere(at, own % 3);
    if (turn.current !== own) return;
    if (!asked.ok) {
      setNow({ is: 'failed', why: asked.why });
      return;
    }
    const draft = draftOfItem(asked.item, asked.names, [], settings.read().units);
    setNow(
      draft === null
        ? { is: 'failed', why: 'asking broke off' }
        : { is: 'made', draft, shows: asked.shows, inS: asked.followsS - at.atS },
    );
  };
  return (
    <div className="poll-making">
      <p className="quiet">{say('teach-poll.here.about')}</p>
      <button
        type="button"
        className="button"
        aria-disabled={now.is === 'making'}
        onClick={() => void make()}
      >
        {say(now.is === 'none' ? 'teach-poll.here.make' : 'teach-poll.here.again')}
      </button>
      <p role="status" className={now.is === 'failed' ? 'invalid' : 'quiet'}>
        {statusOf(now)}
      </p>
      {now.is === 'made' ? <DraftView draft={now.draft} onAsk={onAsk} /> : null}
    </div>
  );
}

function statusOf(now: Now): string {
  switch (now.is) {
    case 'none':
      return '';
    case 'making':
      return say('teach-poll.making');
    case 'failed':
      return say(`teach-poll.failed.${now.why}`);
    case 'made':
      return [
        say('teach-poll.here.follows', { seconds: Math.max(0, Math.round(now.inS)) }),
        ...(now.shows ? [] : [say('teach-poll.here.guess')]),
      ].join(' ');
  }
}
