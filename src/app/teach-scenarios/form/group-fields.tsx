import { Fragment, type ReactNode } from 'react';
import { isGroup, type Path, type Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { useForm } from './form-context.ts';

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  /** Only these keys, in this order; all of the schema where it is left out. */
  readonly keys?: readonly string[];
}

/** The fields of a group, without a frame of its own. */
export function GroupFields({ path, schema, value, keys }: Props): ReactNode {
  const { renderField } = useForm();
  const { properties = {}, required = [] } = schema;
  const group = isGroup(value) ? value : {};
  return (keys ?? Object.keys(properties)).map((key) => {
    const inner = properties[key];
    if (inner === undefined) return null;
    const own = Object.hasOwn(group, key) ? group[key] : undefined;
    const isRequired = required.includes(key);
    const field = { path: [...path, key], schema: inner, value: own, required: isRequired };
    return <Fragment key={key}>{renderField({ ...field, beside: group })}</Fragment>;
  });
}
