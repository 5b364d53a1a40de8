import type { ReactNode } from 'react';
import { say } from '../../../i18n/index.ts';
import { ChoiceField, type Option } from './choice-field.tsx';
import { FaultField } from './fault-field.tsx';
import { type FieldProps, type FormWays, useForm } from './form-context.ts';
import { wordTitle } from './word-title.ts';

/** Lists of faults, by the key that leads to them. */
const OF_FAULTS: ReadonlySet<string> = new Set(['cause', 'accept', 'claim', 'causes']);

/** Where a key names something of the library or of the plant; null where it does not. */
export function namedField(props: FieldProps): ReactNode {
  const key = props.path.at(-1);
  const list = props.path.at(-2);
  if (typeof key === 'number' && typeof list === 'string' && OF_FAULTS.has(list)) {
    return <FaultField {...props} />;
  }
  const isOfAct = typeof props.beside.do === 'string';
  if (key === 'plant' || key === 'profile' || (isOfAct && NAMED_IN_ACTS.has(String(key)))) {
    return <NamedField {...props} />;
  }
  return null;
}

const NAMED_IN_ACTS: ReadonlySet<string> = new Set([
  'cock',
  'part',
  'way',
  'setting',
  'servo',
  'point',
]);

function NamedField(props: FieldProps) {
  const { path, schema, value, required } = props;
  const options = optionsOf(String(path.at(-1)), props, useForm());
  return (
    <ChoiceField
      path={path}
      schema={schema}
      value={value}
      required={required}
      options={options}
      none={path.at(-1) === 'profile' ? say('author.profile.own') : say('author.choose')}
    />
  );
}

function optionsOf(
  key: string,
  { path, beside }: FieldProps,
  { facts, plant }: FormWays,
): readonly Option[] {
  const asWritten = (names: readonly string[]) =>
    names.map((name) => ({ value: name, title: name }));
  switch (key) {
    case 'plant':
      return facts.plants.map(({ id, title }) => ({ value: id, title }));
    case 'profile':
      return facts.profiles.map(({ id, title }) => ({ value: id, title }));
    case 'cock':
      return asWritten(plant?.cocks ?? []);
    case 'servo':
      return asWritten(plant?.servos ?? []);
    case 'point':
      return asWritten(['isolator', ...(plant?.cocks ?? [])]);
    case 'part':
      return asWritten(
        beside.do === 'adjust'
          ? [...new Set(plant?.settings.map(({ part }) => part))]
          : (plant?.parts.map(({ part }) => part) ?? []),
      );
    case 'way':
      return (plant?.parts.find(({ part }) => part === beside.part)?.ways ?? []).map((way) => ({
        value: way,
        title: wordTitle(path, way),
      }));
    case 'setting':
      return (plant?.settings ?? [])
        .filter(({ part }) => part === beside.part)
        .map(({ setting, unit, min, max }) => ({
          value: setting,
          title: say('author.setting', { setting, min, max, unit }),
        }));
    default:
      return [];
  }
}
