import { say } from '../../i18n/index.ts';
import type { AuthorFault } from './author-protocol.ts';
import type { Described } from './form/field-frame.tsx';

interface Props {
  readonly described: Partial<Described>;
  readonly faults: readonly AuthorFault[];
  readonly chosen: string;
  readonly search: string;
  readonly onSearch: (search: string) => void;
  readonly onChoose: (id: string) => void;
  /** Where no label stands beside it. */
  readonly label?: string;
  /** What it is to choose none; left out, one must be chosen. */
  readonly none?: string;
}

/** The catalogue in families, narrowed by a word of the fault, its part or its mechanism. */
export function FaultSelect(props: Props) {
  const { described, faults, chosen, search, onSearch, onChoose, none, label } = props;
  const wanted = search.trim().toLowerCase();
  const found = faults.filter(
    ({ id, component, mechanism }) =>
      wanted === '' || `${id} ${component} ${mechanism}`.toLowerCase().includes(wanted),
  );
  const families = [...new Set(found.map(({ family }) => family))];
  const isShown = chosen === '' || found.some(({ id }) => id === chosen);
  return (
    <div className="author-fault">
      <input
        type="search"
        value={search}
        placeholder={say('author.fault.search')}
        aria-label={say('author.fault.search')}
        onChange={({ target }) => onSearch(target.value)}
      />
      <select
        {...described}
        aria-label={label}
        value={chosen}
        onChange={({ target }) => onChoose(target.value)}
      >
        {none !== undefined || chosen === '' ? (
          <option value="">{none ?? say('author.fault.choose', { count: found.length })}</option>
        ) : null}
        {isShown ? null : <option value={chosen}>{chosen}</option>}
        {families.map((family) => (
          <optgroup key={family} label={family}>
            {found
              .filter((fault) => fault.family === family)
              .map(({ id }) => (
                <option key={id} value={id}>
                  {id}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
      {wanted === '' ? null : (
        <p className="quiet" role="status">
          {say('author.fault.found', { count: found.length })}
        </p>
      )}
    </div>
  );
}
