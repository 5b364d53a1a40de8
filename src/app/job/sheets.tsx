import { useState } from 'react';
import { say, sayMessage } from '../../i18n/index.ts';
import { kindOfUnit, type Unit } from '../../quantity/index.ts';
import { quantityText } from '../../wording/index.ts';
import type { Job } from '../library/exercises.ts';
import type { Facts } from '../session/protocol.ts';
import { useStorePart } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { useFacts, useSession } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';

const READ_COMMISSIONING = {
  type: 'check',
  what: 'commissioning sheet',
  place: '',
  other: '',
} as const;

/** Paper at the plant: what was written at the last visit, and how it was commissioned. */
export function Sheets({ job }: { readonly job: Job }) {
  const { sheet } = useFacts();
  const session = useSession();
  const [open, setOpen] = useState(false);
  return (
    <>
      <LastVisit job={job} />
      <section className="sheet" aria-labelledby="commissioning-title">
        <h3 id="commissioning-title">{say('job.commissioning')}</h3>
        {sheet.length === 0 ? (
          <p className="quiet">{say('job.commissioning.none')}</p>
        ) : (
          <>
            <button
              type="button"
              className="button"
              aria-expanded={open}
              onClick={() => {
                if (!open) session.perform(READ_COMMISSIONING);
                setOpen(!open);
              }}
            >
              {say('job.commissioning.read')}
            </button>
            {open ? <Commissioning rows={sheet} /> : null}
          </>
        )}
      </section>
    </>
  );
}

function LastVisit({ job }: { readonly job: Job }) {
  const { desk, take } = useExercise();
  const { sheet } = job;
  return (
    <section className="sheet" aria-labelledby="sheet-title">
      <h3 id="sheet-title">{say('job.sheet')}</h3>
      <button
        type="button"
        className="button"
        aria-expanded={desk.sheetRead}
        aria-disabled={desk.sheetRead}
        onClick={() => {
          if (!desk.sheetRead) take({ type: 'read sheet' });
        }}
      >
        {say('job.sheet.read')}
      </button>
      {desk.sheetRead && sheet === undefined ? (
        <p className="quiet">{say('job.sheet.none')}</p>
      ) : null}
      {desk.sheetRead && sheet !== undefined ? (
        <>
          <p className="quiet">{say('job.sheet.by', { by: sheet.by, date: sheet.date })}</p>
          <Rows
            rows={sheet.rows.map(({ what, value, unit }) => ({
              what,
              value: `${value} ${unit ?? ''}`,
            }))}
          />
          {sheet.remarks === undefined ? null : (
            <p>
              <strong>{say('job.sheet.remarks')}:</strong> {sheet.remarks}
            </p>
          )}
        </>
      ) : null}
    </section>
  );
}

function Commissioning({ rows }: { readonly rows: Facts['sheet'] }) {
  const units = useStorePart(settings, (state) => state.units);
  return (
    <>
      <p className="quiet">{say('job.commissioning.lead')}</p>
      <Rows
        rows={rows.map(({ what, value, unit }) => ({
          what: sayMessage(what),
          value:
            typeof value === 'number' && unit !== null
              ? quantityText(value, kindOfUnit(unit as Unit), units)
              : `${value ?? '–'} ${unit ?? ''}`,
        }))}
      />
    </>
  );
}

function Rows({ rows }: { readonly rows: readonly { what: string; value: string }[] }) {
  return (
    <table className="rows">
      <thead className="for-readers">
        <tr>
          <th scope="col">{say('job.sheet.what')}</th>
          <th scope="col">{say('job.sheet.value')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, value }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
