import { useMemo, useState } from 'react';
import { say } from '../../../i18n/index.ts';
import type { Path, Plain, PlainGroup } from '../../../scenario/editing/index.ts';
import type { AuthorFault } from '../author-protocol.ts';
import { FaultSelect } from '../fault-select.tsx';
import { FieldFrame } from './field-frame.tsx';
import { useForm } from './form-context.ts';
import { textIn } from './text-field.tsx';

interface Props {
  readonly path: Path;
  readonly value: Plain | undefined;
  readonly beside: PlainGroup;
}

/** A fault of the plant, by family; one that is new to its line brings its usual severity. */
export function FaultField({ path, value, beside }: Props) {
  const { edit } = useForm();
  const faults = useFaults();
  const [search, setSearch] = useState('');
  const written = textIn(value);
  const chosen = faults.find(({ id }) => id === written);
  const choose = (id: string) => {
    const fault = faults.find((one) => one.id === id);
    const own = { ...beside, fault: id };
    // A number that meant something for one fault means nothing for another.
    if (fault !== undefined && 'severity' in beside) {
      const rest = typeof beside.onset === 'object' ? omitOnset(own, fault) : own;
      edit({ do: 'set', path: path.slice(0, -1), value: { ...rest, severity: fault.typical } });
    } else edit({ do: 'set', path, value: id });
  };
  return (
    <FieldFrame
      path={path}
      hint={chosen === undefined ? undefined : say('author.fault.is', about(chosen))}
    >
      {(described) => (
        <FaultSelect
          described={described}
          faults={faults}
          chosen={written}
          search={search}
          onSearch={setSearch}
          onChoose={choose}
        />
      )}
    </FieldFrame>
  );
}

/** Those of the plant; of any where the file names none. */
export function useFaults(): readonly AuthorFault[] {
  const { plant, facts } = useForm();
  return useMemo(() => {
    if (plant !== null) return plant.faults;
    const all = new Map(facts.plants.flatMap(({ faults }) => faults.map((one) => [one.id, one])));
    return [...all.values()];
  }, [plant, facts]);
}

function about({ component, mechanism }: AuthorFault) {
  return { component, mechanism };
}

/** A mechanism that does not come and go loses that it did. */
function omitOnset(own: PlainGroup, { onsets }: AuthorFault): PlainGroup {
  const { onset, ...rest } = own;
  const comesAndGoes = typeof onset === 'object' && onset !== null && 'intermittent' in onset;
  return comesAndGoes && !onsets.includes('intermittent') ? rest : own;
}
