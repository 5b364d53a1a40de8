import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { courseEnd, setCourseEnd } from './course-end.ts';
import { troubleWords } from './import-words.ts';

interface Props {
  readonly day: string | null;
  readonly onChange: (day: string | null) => void;
}

/** The day a course ends, where there is one. */
export function CourseEnd({ day, onChange }: Props) {
  const [said, setSaid] = useState('');
  return (
    <div className="quiz-course-end">
      <label className="field">
        <span>{say('quiz.course-end')}</span>
        <input
          type="date"
          defaultValue={day ?? ''}
          aria-describedby="course-end-about"
          onChange={({ target }) => {
            const trouble = setCourseEnd(target.value);
            setSaid(trouble === null ? '' : troubleWords(trouble));
            onChange(courseEnd());
          }}
        />
      </label>
      <p className="quiet" id="course-end-about">
        {say('quiz.course-end.about')}
      </p>
      <p className="invalid" role="status">
        {said}
      </p>
    </div>
  );
}
