import type { ReactNode } from 'react';
import { type Path, pathText } from '../../../scenario/editing/index.ts';
import { fieldId, labelOf, useForm } from './form-context.ts';

export interface Described {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': boolean;
}

interface Props {
  readonly path: Path;
  /** Other than that of the key. */
  readonly label?: string | undefined;
  readonly hint?: string | undefined;
  readonly children: (described: Described) => ReactNode;
  /** Beside the label. */
  readonly act?: ReactNode;
}

/** A name, a control, what it is for and what is wrong with it. Of an entry the list says the name. */
export function FieldFrame({ path, label = labelOf(path), hint: about, children, act }: Props) {
  const isEntry = typeof path.at(-1) === 'number';
  const hint = isEntry ? undefined : about;
  const { issues } = useForm();
  const id = fieldId(path);
  const wrong = issues.get(pathText(path)) ?? [];
  const described = [
    ...(hint === undefined ? [] : [`${id}-hint`]),
    ...(wrong.length === 0 ? [] : [`${id}-wrong`]),
  ];
  return (
    <div className="author-field" data-wrong={wrong.length > 0}>
      <div className={isEntry ? 'for-readers' : 'author-field-head'}>
        <label htmlFor={id}>{label}</label>
        {act}
      </div>
      {children({
        id,
        'aria-describedby': described.length === 0 ? undefined : described.join(' '),
        'aria-invalid': wrong.length > 0,
      })}
      {hint === undefined ? null : (
        <p className="quiet author-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <WrongHere id={`${id}-wrong`} path={path} />
    </div>
  );
}

export function WrongHere({ id, path }: { readonly id?: string; readonly path: Path }) {
  const { issues } = useForm();
  const wrong = issues.get(pathText(path)) ?? [];
  if (wrong.length === 0) return null;
  return (
    <p className="invalid" id={id}>
      {wrong.join(' ')}
    </p>
  );
}
