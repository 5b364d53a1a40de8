import { useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { searchFaults } from './fault-acts.ts';
import { FaultChosen } from './fault-chosen.tsx';
import { FaultsStanding } from './faults-standing.tsx';
import { useFactsOfClass } from './use-facts-of-class.ts';
import { WaitingActs } from './waiting-acts.tsx';

/** The catalogue of the plant: looked through, and put in. */
export function FaultPanel() {
  const facts = useFactsOfClass();
  const [search, setSearch] = useState('');
  const [family, setFamily] = useState('');
  const [chosen, setChosen] = useState<string | null>(null);
  const faults = facts?.faults ?? [];
  const families = useMemo(() => [...new Set(faults.map((fault) => fault.family))], [faults]);
  const found = useMemo(() => searchFaults(faults, search, family), [faults, search, family]);
  if (facts === null) return <p className="quiet">{say('teach-class.facts.loading')}</p>;
  const fault = faults.find(({ id }) => id === chosen);
  if (fault !== undefined) {
    return <FaultChosen key={fault.id} fault={fault} onBack={() => setChosen(null)} />;
  }
  return (
    <>
      <p className="caution">{say('app.caution.faults')}</p>
      <FaultsStanding faults={faults} />
      <WaitingActs />
      <div className="fault-search">
        <label className="field">
          <span>{say('teach-class.fault.search')}</span>
          <input type="search" value={search} onChange={({ target }) => setSearch(target.value)} />
        </label>
        <label className="field">
          <span>{say('teach-class.fault.family')}</span>
          <select value={family} onChange={({ target }) => setFamily(target.value)}>
            <option value="">{say('teach-class.fault.every-family')}</option>
            {families.map((each) => (
              <option key={each} value={each}>
                {each}
              </option>
            ))}
          </select>
        </label>
      </div>
      <p className="quiet" role="status">
        {say('teach-class.fault.found', { count: found.length })}
      </p>
      <ul className="fault-list">
        {found.map(({ id, mechanism }) => (
          <li key={id}>
            <button type="button" className="fault-one" onClick={() => setChosen(id)}>
              <strong>{id}</strong>
              <span className="quiet">{mechanism}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
