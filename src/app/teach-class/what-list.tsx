import { say } from '../../i18n/index.ts';
import type { ClassOffer } from './class-offers.ts';

interface Props {
  readonly offers: readonly ClassOffer[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

/** One of several, each with what it is about. */
export function WhatList({ offers, chosen, onChoose }: Props) {
  if (offers.length === 0) return <p className="quiet">{say('teach-class.what.none')}</p>;
  return (
    <fieldset className="what-list">
      <legend className="for-readers">{say('teach-class.what.which')}</legend>
      {offers.map(({ what, about }) => (
        <label key={what.id} className="what-one" data-chosen={what.id === chosen}>
          <input
            type="radio"
            name="class-what"
            checked={what.id === chosen}
            onChange={() => onChoose(what.id)}
          />
          <span>
            <strong>{what.title}</strong>
            <span className="quiet">{about}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
