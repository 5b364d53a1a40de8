import { say, sayWord } from '../../../i18n/index.ts';
import { isGroup, type Plain } from '../../../scenario/editing/index.ts';
import { ChoiceField } from './choice-field.tsx';
import { useFaults } from './fault-field.tsx';
import { type FieldProps, useForm } from './form-context.ts';
import { GroupFields } from './group-fields.tsx';

const KINDS = ['start', 'time', 'step', 'intermittent'] as const;
type Kind = (typeof KINDS)[number];

const FIRST: Readonly<Record<Kind, Plain>> = {
  start: 'start',
  time: { at: 60 },
  step: { step: 'purge' },
  intermittent: { intermittent: { from: 30, period: 60, duty: 0.5 } },
};

/** When a fault comes: from the start, at a time, on entering a step, or again and again. */
export function OnsetField({ path, schema, value, beside }: FieldProps) {
  const { edit } = useForm();
  const fault = useFaults().find(({ id }) => id === beside.fault);
  const kind = kindOf(value);
  const options = KINDS.filter((one) => fault === undefined || fault.onsets.includes(one));
  const group = schema.anyOf?.find(({ type }) => type === 'object');
  return (
    <>
      <ChoiceField
        path={path}
        schema={schema}
        value={kind}
        required={true}
        options={options.map((one) => ({ value: one, title: sayWord('author.onset', one) }))}
        onChoose={(chosen) => {
          const put = FIRST[chosen as Kind];
          if (put === 'start') edit({ do: 'remove', path });
          else edit({ do: 'set', path, value: put });
        }}
      />
      {kind === 'start' || group === undefined ? null : (
        <div className="author-onset">
          {kind === 'intermittent' ? (
            <GroupFields
              path={[...path, 'intermittent']}
              schema={group.properties?.intermittent ?? {}}
              value={isGroup(value) ? value.intermittent : undefined}
            />
          ) : (
            <GroupFields
              path={path}
              schema={{ ...group, required: ['at', 'step'] }}
              value={value}
              keys={[kind === 'time' ? 'at' : 'step']}
            />
          )}
          {kind === 'intermittent' ? (
            <p className="quiet author-hint">{say('author.onset.intermittent.about')}</p>
          ) : null}
        </div>
      )}
    </>
  );
}

function kindOf(value: Plain | undefined): Kind {
  if (!isGroup(value)) return 'start';
  if ('step' in value) return 'step';
  return 'intermittent' in value ? 'intermittent' : 'time';
}
