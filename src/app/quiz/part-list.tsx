import { say } from '../../i18n/index.ts';
import type { ResultPart } from './result-parts.ts';

interface Props<Name extends string> {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly ResultPart<Name>[];
  readonly nameOf: (name: Name) => string;
}

/** Right of asked, a line each: squares as many as were asked, filled as many as were right. */
export function PartList<Name extends string>({ id, title, parts, nameOf }: Props<Name>) {
  return (
    <section className="quiz-part" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <ul className="quiz-parts">
        {parts.map(({ name, right, count }) => (
          <li key={name}>
            <span>{nameOf(name)}</span>
            <span>{say('quiz.part', { right, count })}</span>
            <span className="quiz-parts-bar" aria-hidden="true">
              <span style={{ width: `${(100 * right) / count}%` }} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
