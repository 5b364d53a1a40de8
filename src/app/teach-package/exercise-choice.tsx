import { useMemo } from 'react';
import { say } from '../../i18n/index.ts';
import { exercisesOf, plantTitle } from '../library/exercises.ts';
import { startsByPlant } from '../library/starts.ts';

export type PackableKind = 'job' | 'drill' | 'lesson';
export interface Packable {
  readonly kind: PackableKind;
  readonly id: string;
  readonly title: string;
  /** What it is, in the words that a learner reads first. */
  readonly about: string;
}

interface Props {
  readonly kind: PackableKind;
  readonly chosen: Packable | null;
  readonly onChoose: (id: string) => void;
}

/** Everything of a kind, by plant, in the order in which it is practised. */
export function packables(kind: PackableKind) {
  return startsByPlant().map(({ plant }) => {
    const { jobs, drills, lessons } = exercisesOf(plant);
    const all: readonly Packable[] = {
      job: jobs.map(({ id, title, card }) => ({ kind, id, title, about: card.complaint })),
      drill: drills.map(({ id, title, question }) => ({ kind, id, title, about: question })),
      lesson: lessons.map(({ id, title, intro }) => ({ kind, id, title, about: intro })),
    }[kind];
    return { plant, all };
  });
}

export function ExerciseChoice({ kind, chosen, onChoose }: Props) {
  const groups = useMemo(() => packables(kind).filter(({ all }) => all.length > 0), [kind]);
  return (
    <div className="package-which">
      <label className="field">
        <span>{say('package.which')}</span>
        <select value={chosen?.id ?? ''} onChange={({ target }) => onChoose(target.value)}>
          {groups.map(({ plant, all }) => (
            <optgroup key={plant} label={plantTitle(plant)}>
              {all.map(({ id, title }) => (
                <option key={id} value={id}>
                  {title}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </label>
      <p className="quiet">{chosen?.about}</p>
    </div>
  );
}
