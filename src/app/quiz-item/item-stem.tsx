import '../styles/quiz-item.css';
import { useMemo } from 'react';
import { say } from '../../i18n/index.ts';
import type { Item } from '../../quiz/index.ts';
import type { Store } from '../session/store.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ItemLadder } from './item-ladder.tsx';
import { ItemReadings } from './item-readings.tsx';
import { ItemRecord } from './item-record.tsx';
import { namedPlaces } from './named-places.ts';
import { useSays } from './use-says.ts';

interface Props {
  readonly item: Item;
  readonly surroundings: Store<Surroundings>;
}

/** All that is known before the question: the situation, what was read, the record of the start. */
export function ItemStem({ item, surroundings }: Props) {
  const look = useStore(surroundings);
  const says = useSays(item);
  const { tells, readings, shows } = item.stem;
  const places = useMemo(() => (item.run === null ? [] : namedPlaces(item)), [item]);
  const hasRecord = item.run !== null && (shows.chart || shows.trends.length > 0);
  const isPlain = !hasRecord && readings.length === 0 && places.length === 0;
  return (
    <div className="item-stem" data-plain={isPlain}>
      <div className="item-told">
        {item.caution === null ? null : (
          <p className="caution">
            <strong>{say('app.caution.short')}</strong> {says(item.caution)}
          </p>
        )}
        {tells.length === 0 ? null : (
          <section className="item-tells">
            <h2 className="for-readers">{say('quiz.stem.situation')}</h2>
            <p>{tells.map(says).join(' ')}</p>
          </section>
        )}
        {readings.length === 0 ? null : <ItemReadings item={item} />}
        {places.length === 0 ? null : <ItemLadder item={item} places={places} />}
      </div>
      {hasRecord ? (
        <div className="item-record">
          <ItemRecord item={item} look={look} />
        </div>
      ) : null}
    </div>
  );
}
