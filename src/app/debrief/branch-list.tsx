import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import { useWorkAround } from '../job/work-context.tsx';
import { useStorePart } from '../session/store.ts';
import { hrefOf } from '../shell/route.ts';
import { listBranches } from '../work/device-branches.ts';
import { eraseWork } from '../work/device-work.ts';
import { MOST_BRANCHES } from '../work/work-record.ts';
import type { WorkEntry } from '../work/work-types.ts';
import { shortClock } from '../working/clock-text.ts';
import { Part } from './debrief-parts.tsx';

/** The branches of this work: to go on with, to compare, to erase. Nothing where there is none. */
export function BranchList() {
  const record = useStorePart(useWorkAround().state, (state) => state.record);
  const [branches, setBranches] = useState(() => (record === null ? [] : listBranches(record)));
  if (record === null || branches.length === 0) return null;
  return (
    <Part id="branches" title={say('branch.list')}>
      <p className="choices-lead">
        {say('branch.list-lead', { count: branches.length, most: MOST_BRANCHES })}
      </p>
      <ul className="branches">
        {branches.map((entry) => (
          <Entry
            key={entry.branch}
            entry={entry}
            onErase={() => {
              eraseWork(entry);
              setBranches(listBranches(record));
            }}
          />
        ))}
      </ul>
    </Part>
  );
}

function Entry({ entry, onErase }: { readonly entry: WorkEntry; readonly onErase: () => void }) {
  const { id, branch = 1, startedISO, branchOf } = entry;
  const time = shortClock(branchOf?.t ?? 0);
  const href = hrefOf({ page: 'branch', id, branch });
  return (
    <li>
      <span>{say('branch.entry', { time, when: new Date(startedISO).toLocaleString() })}</span>
      <span className="buttons">
        <a
          className="button"
          href={href}
          aria-label={say(entry.closed ? 'branch.compare-name' : 'branch.go-on-name', { time })}
        >
          {say(entry.closed ? 'branch.compare' : 'branch.go-on')}
        </a>
        <SureButton
          label={say('branch.erase')}
          name={say('branch.erase-name', { time })}
          ask={say('branch.erase-sure')}
          sure={say('branch.erase')}
          keep={say('branch.erase-keep')}
          onSure={onErase}
        />
      </span>
    </li>
  );
}
