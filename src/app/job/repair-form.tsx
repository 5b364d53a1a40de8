import { type FormEvent, useState } from 'react';
import type { RepairWay } from '../../engine/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import type { Facts } from '../session/protocol.ts';
import { useFacts, useSession } from '../working/session-context.tsx';
import { ChoiceList } from './choice-list.tsx';

type Part = Facts['parts'][number];

/** A part, and what is done to it; every part of the plant is there, whatever is wrong. */
export function RepairForm() {
  const facts = useFacts();
  const session = useSession();
  const [name, setName] = useState('');
  const [way, setWay] = useState('');
  const [said, setSaid] = useState('');
  const part = facts.parts.find((each) => each.part === name) ?? null;
  function choose(next: string): void {
    setName(next);
    const ways = facts.parts.find((each) => each.part === next)?.ways ?? [];
    setWay(ways.length === 1 ? (ways[0] ?? '') : '');
    setSaid('');
  }
  function act(event: FormEvent): void {
    event.preventDefault();
    if (part === null || way === '') return;
    session.perform({ type: 'repair', part: name, way: way as RepairWay });
    setSaid(say('job.repair.done', { way: sayWord('job.way', way), part: name }));
  }
  return (
    <form className="work-form" onSubmit={act} aria-label={say('job.acts.repair')}>
      <ChoiceList
        label={say('job.repair.part')}
        value={name}
        empty={say('job.repair.choose-part')}
        options={facts.parts.map((each) => ({ value: each.part, text: each.part }))}
        onChoose={choose}
      />
      <ChoiceList
        label={say('job.repair.way')}
        value={way}
        empty={say('job.repair.choose-way')}
        disabled={part === null}
        options={(part?.ways ?? []).map((each) => ({
          value: each,
          text: wayWithCosts(part, each),
        }))}
        onChoose={(next) => {
          setWay(next);
          setSaid('');
        }}
      />
      {part === null ? null : <PartCautions part={part} />}
      <p className="caution">{say('job.acts.caution')}</p>
      <button type="submit" className="button primary" disabled={part === null || way === ''}>
        {say('job.repair.do')}
      </button>
      <p className="said" role="status">
        {said}
      </p>
    </form>
  );
}

function PartCautions({ part }: { readonly part: Part }) {
  return (
    <>
      {part.opens === 'gas' ? (
        <p className="caution strong">{say('job.repair.opens-gas')}</p>
      ) : null}
      {part.opens === 'water' ? (
        <p className="caution strong">{say('job.repair.opens-water')}</p>
      ) : null}
      {part.electrical ? <p className="caution strong">{say('job.repair.electrical')}</p> : null}
    </>
  );
}

function wayWithCosts(part: Part | null, way: RepairWay): string {
  const word = sayWord('job.way', way);
  const minutes = part?.minutes[way];
  if (part === null || minutes === undefined) return word;
  return way === 'replace' && part.cost > 0
    ? `${word} (${say('job.repair.costs-parts', { minutes, cost: part.cost })})`
    : `${word} (${say('job.repair.costs', { minutes })})`;
}
