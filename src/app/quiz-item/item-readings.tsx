import { useId } from 'react';
import { say } from '../../i18n/index.ts';
import type { Item } from '../../quiz/index.ts';
import { answerWords, momentWords, sourceWords } from '../../wording/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { namesOf } from './item-words.ts';

/** What was read, when, and what it said: in the reader's units. */
export function ItemReadings({ item }: { readonly item: Item }) {
  const { units } = useStore(settings);
  const names = namesOf(item);
  const id = useId();
  return (
    <section className="item-readings">
      <h2 id={id}>{say('quiz.stem.readings')}</h2>
      <table aria-labelledby={id}>
        <thead>
          <tr>
            <th scope="col">{say('quiz.stem.what')}</th>
            <th scope="col">{say('quiz.stem.when')}</th>
            <th scope="col">{say('quiz.stem.read')}</th>
          </tr>
        </thead>
        <tbody>
          {item.stem.readings.map((told) => (
            <tr key={`${told.check} ${told.moment} ${told.aspect}`}>
              <th scope="row">{sourceWords(names, told.check)}</th>
              <td>{whenWords(told.check, told.moment)}</td>
              <td>{answerWords(names, told, units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** What stands the same all the time, and what the controller has kept, is of no one moment. */
function whenWords(check: string, moment: string): string {
  return moment === 'standing' || check.startsWith('history') ? '' : momentWords(moment);
}
