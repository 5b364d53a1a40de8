import type { CSSProperties } from 'react';
import type { Skill } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';
import type { SkillOnMap } from './learner-map.ts';
import { SkillBar } from './skill-bar.tsx';
import { SkillDrawing } from './skill-drawing.tsx';
import { countWords, dayOf, masteryName, skillTitle } from './skill-words.ts';

/** From what comes in to what burns, then what watches it, and what all of it rests on. */
const ALONG_THE_PLANT: readonly Skill[] = [
  'air',
  'fuel',
  'ignition',
  'combustion',
  'sensing',
  'limits',
  'wiring',
  'sequence',
  'conduct',
];

/** What joins the skills on the map: pipes carry something, signals only tell. */
const JOINTS = [
  { at: 'air-ignition', way: 'across', carries: 'air' },
  { at: 'fuel-ignition', way: 'across', carries: 'gas' },
  { at: 'ignition-combustion', way: 'across', carries: 'flame' },
  { at: 'ignition-sensing', way: 'across', carries: 'signal' },
  { at: 'combustion-limits', way: 'across', carries: 'flame' },
  { at: 'sensing-wiring', way: 'down', carries: 'signal' },
  { at: 'limits-wiring', way: 'down', carries: 'signal' },
  { at: 'wiring-sequence', way: 'back', carries: 'signal' },
  { at: 'sequence-fuel', way: 'up', carries: 'signal' },
  { at: 'sequence-ignition', way: 'up', carries: 'signal' },
] as const;

interface Props {
  readonly skills: readonly SkillOnMap[];
  readonly chosen: Skill | null;
  readonly onChoose: (skill: Skill | null) => void;
}

/** The nine skills along the plant, each with how far one is. */
export function SkillMap({ skills, chosen, onChoose }: Props) {
  const onMap = ALONG_THE_PLANT.flatMap((skill) => skills.filter((each) => each.skill === skill));
  return (
    <div className="skill-map">
      <div className="skill-joints" aria-hidden="true">
        {JOINTS.map(({ at, way, carries }) => (
          <span key={at} style={placeAt(at)} data-way={way} data-carries={carries} />
        ))}
      </div>
      <ul className="skill-places">
        {onMap.map((each) => (
          <li
            key={each.skill}
            className="skill-place"
            data-skill={each.skill}
            style={placeAt(each.skill)}
          >
            <button
              type="button"
              className="skill"
              data-word={each.word}
              aria-pressed={each.skill === chosen}
              onClick={() => onChoose(each.skill === chosen ? null : each.skill)}
            >
              <span className="skill-head">
                <SkillDrawing skill={each.skill} />
                <strong>{skillTitle(each.skill)}</strong>
              </span>
              <span className="skill-word">{masteryName(each.word)}</span>
              <SkillBar rating={each.rating} />
              <span className="skill-known">{shortly(each)}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className="skill-legend quiet">{say('learner.legend')}</p>
    </div>
  );
}

function shortly({ results, lastISO }: SkillOnMap): string {
  const count = countWords(results);
  return lastISO === null ? count : say('learner.known-short', { count, when: dayOf(lastISO) });
}

/** Only where the map has room for places does the style sheet make use of it. */
function placeAt(area: string): CSSProperties {
  return { '--at': area } as CSSProperties;
}
