import { useMemo } from 'react';
import { say } from '../../i18n/index.ts';
import { equipmentOf } from '../reading/equipment.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { useFacts, useSession, useSessionPart } from './session-context.tsx';

/** The plant as a list: the same equipment, states and acts as the drawing. */
export function EquipmentList() {
  const facts = useFacts();
  const session = useSession();
  const { units } = useStore(settings);
  useSessionPart((state) => state.shownS);
  const groups = useMemo(() => equipmentOf(facts), [facts]);
  const frame = session.shownFrame();
  if (frame === null) return null;
  const mayTurn = facts.allow === null || facts.allow.includes('turn-cock');
  return (
    <div className="equipment">
      <div className="equipment-columns">
        {groups.map((group) => (
          <section key={group.title}>
            <h3>{group.title}</h3>
            <dl>
              {group.items.map((item) => (
                <div key={item.id} data-item={item.id}>
                  <dt>{item.name}</dt>
                  <dd>{item.state(frame, units)}</dd>
                  {item.cock === null ? null : (
                    <CockActs cock={item.cock.id} name={item.name} disabled={!mayTurn} />
                  )}
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </div>
  );
}

function CockActs(props: {
  readonly cock: string;
  readonly name: string;
  readonly disabled: boolean;
}) {
  const session = useSession();
  const { cock, name, disabled } = props;
  return (
    <dd className="equipment-acts">
      {([0, 1] as const).map((opening) => (
        <button
          key={opening}
          type="button"
          className="button"
          disabled={disabled}
          onClick={() => session.act({ type: 'turn-cock', cock, opening })}
        >
          {say(opening === 0 ? 'app.list.shut-it' : 'app.list.open-it', { name })}
        </button>
      ))}
    </dd>
  );
}
