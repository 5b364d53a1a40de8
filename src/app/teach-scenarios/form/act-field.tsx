import { isGroup, type Path, type Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { ChoiceField } from './choice-field.tsx';
import { useForm } from './form-context.ts';
import { startingValue } from './starting-value.ts';
import { wordTitle } from './word-title.ts';

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain;
}

/** What is done; another act needs other words beside it. */
export function ActField({ path, schema, value }: Props) {
  const { edit } = useForm();
  const branches = schema.oneOf ?? [];
  const own = [...path, 'do'];
  const words = branches.flatMap((branch) => {
    const word = branch.properties?.do?.const;
    return typeof word === 'string' ? [word] : [];
  });
  const choose = (word: string) => {
    const branch = branches.find((each) => each.properties?.do?.const === word);
    const fresh = branch === undefined ? null : startingValue(branch);
    if (!isGroup(fresh) || fresh === null) return;
    const at = isGroup(value) && value.at !== undefined ? value.at : fresh.at;
    edit({ do: 'set', path, value: { ...fresh, ...(at === undefined ? {} : { at }) } });
  };
  return (
    <ChoiceField
      path={own}
      schema={{}}
      value={isGroup(value) ? value.do : undefined}
      required={true}
      options={words.map((word) => ({ value: word, title: wordTitle(own, word) }))}
      onChoose={choose}
    />
  );
}
