import { useState } from 'react';
import type { ClassLine } from '../../classroom/protocol/index.ts';
import { say } from '../../i18n/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import { hrefOf } from '../shell/route.ts';
import { forgetOwnClass } from '../teach-class/own-classes.ts';
import { askRetention, askToDelete } from './ask-results.ts';
import { whenText } from './when-text.ts';

const DAYS = [1, 7, 30, 90, 365, 1095, 3650] as const;
const DAY_MS = 86_400_000;

interface Props {
  readonly line: ClassLine;
  readonly onChanged: () => void;
}

/** How long the server keeps the class, and throwing it away now. */
export function KeepingForm({ line, onChanged }: Props) {
  const { id, retentionDays, openedMs, closedMs } = line;
  const [trouble, setTrouble] = useState('');
  const keep = async (days: number) => {
    const asked = await askRetention(id, days);
    setTrouble(
      asked.ok ? '' : say(`teach-results.trouble.${asked.trouble}`, { detail: asked.detail }),
    );
    onChanged();
  };
  const remove = async () => {
    const asked = await askToDelete(id);
    if (!asked.ok) {
      setTrouble(say(`teach-results.trouble.${asked.trouble}`, { detail: asked.detail }));
      return;
    }
    forgetOwnClass(id);
    location.hash = hrefOf({ page: 'classes' });
  };
  const sinceMs = closedMs ?? openedMs;
  // What has passed already would delete it at once, and arrow keys go through every choice.
  const left = DAYS.filter((days) => sinceMs + days * DAY_MS > Date.now());
  const choices = [...new Set<number>([...left, retentionDays])].sort((a, b) => a - b);
  return (
    <section className="results-keeping" aria-labelledby="results-keeping-title">
      <h2 id="results-keeping-title">{say('teach-results.keeping')}</h2>
      <label className="field">
        <span>{say('teach-results.keeping.days')}</span>
        <select value={retentionDays} onChange={({ target }) => void keep(Number(target.value))}>
          {choices.map((days) => (
            <option key={days} value={days}>
              {days === 1 ? say('teach-results.day') : say('teach-results.days', { count: days })}
            </option>
          ))}
        </select>
      </label>
      <p className="quiet">
        {say('teach-results.keeping.until', {
          when: whenText(sinceMs + retentionDays * DAY_MS),
        })}
      </p>
      <SureButton
        label={say('teach-results.delete')}
        ask={say('teach-results.delete.ask')}
        sure={say('teach-results.delete.sure')}
        keep={say('teach-results.delete.keep')}
        onSure={() => void remove()}
      />
      <p className="invalid" role="alert">
        {trouble}
      </p>
    </section>
  );
}
