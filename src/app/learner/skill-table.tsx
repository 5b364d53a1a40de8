import { say } from '../../i18n/index.ts';
import type { SkillOnMap } from './learner-map.ts';
import { reachWords } from './skill-bar.tsx';
import { dayOf, masteryName, skillTitle } from './skill-words.ts';

/** All that the map shows, in rows. */
export function SkillTable({ skills }: { readonly skills: readonly SkillOnMap[] }) {
  return (
    <table className="learner-table">
      <thead>
        <tr>
          <th scope="col">{say('learner.table.skill')}</th>
          <th scope="col">{say('learner.table.word')}</th>
          <th scope="col">{say('learner.table.reach')}</th>
          <th scope="col">{say('learner.table.results')}</th>
          <th scope="col">{say('learner.table.last')}</th>
        </tr>
      </thead>
      <tbody>
        {skills.map(({ skill, word, rating, results, lastISO }) => (
          <tr key={skill}>
            <th scope="row">{skillTitle(skill)}</th>
            <td>{masteryName(word)}</td>
            <td>{rating === null ? '–' : reachWords(rating)}</td>
            <td>{results}</td>
            <td>{lastISO === null ? say('learner.table.never') : dayOf(lastISO)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
