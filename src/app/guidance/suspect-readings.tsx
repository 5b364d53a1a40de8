import type { BoardLine, Told } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { toldWords } from '../../wording/index.ts';
import { useStorePart } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { useFacts } from '../working/session-context.tsx';
import { useGuidance } from './guidance-context.tsx';
import { standingOf } from './standing-of.ts';

/** More readings than so many are counted, not written out. */
const MOST_SHOWN = 3;

/** Under a part that the learner suspects: what was read that speaks for it, and what against. */
export function SuspectReadings({ part }: { readonly part: string }) {
  const { reasoning } = useGuidance();
  if (reasoning === null) return null;
  const line = reasoning.board.find((each) => each.part === part);
  if (line === undefined || (line.speaksFor.length === 0 && line.speaksAgainst.length === 0)) {
    return <p className="suspect-readings quiet">{say('guide.board.neither')}</p>;
  }
  return <Readings line={line} />;
}

function Readings({ line }: { readonly line: BoardLine }) {
  const standing = standingOf(line);
  return (
    <div className="suspect-readings" data-standing={standing}>
      <p className="suspect-standing">{say(`guide.standing.${standing}`)}</p>
      <ToldList title={say('guide.board.for')} sign="+" told={line.speaksFor} />
      <ToldList title={say('guide.board.against')} sign="−" told={line.speaksAgainst} />
    </div>
  );
}

interface ToldListProps {
  readonly title: string;
  readonly sign: string;
  readonly told: readonly Told[];
}

function ToldList({ title, sign, told }: ToldListProps) {
  const facts = useFacts();
  const units = useStorePart(settings, (state) => state.units);
  if (told.length === 0) return null;
  const said = [...new Set(told.map((each) => toldWords(facts, each, units)))];
  const more = said.length - MOST_SHOWN;
  return (
    <dl className="suspect-told">
      <dt>{title}</dt>
      {said.slice(0, MOST_SHOWN).map((each) => (
        <dd key={each}>
          <span aria-hidden="true">{sign}</span> {each}
        </dd>
      ))}
      {more > 0 ? <dd className="quiet">{say('guide.board.more', { more })}</dd> : null}
    </dl>
  );
}
