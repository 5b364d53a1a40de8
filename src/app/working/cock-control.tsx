import { say } from '../../i18n/index.ts';
import { readChannel } from '../reading/waits-at.ts';
import { useFacts, useSession } from './session-context.tsx';

interface Props {
  readonly cock: { readonly id: string; readonly channel: string };
  readonly disabled: boolean;
}

const OPENINGS = [0, 0.25, 0.5, 1] as const;

/** A manual cock, turned by quarter turns and points between. */
export function CockControl({ cock, disabled }: Props) {
  const facts = useFacts();
  const session = useSession();
  const frame = session.shownFrame();
  const opening = frame === null ? 1 : (readChannel(facts, frame, cock.channel) ?? 1);
  return (
    <fieldset className="firing" disabled={disabled}>
      <legend>{say('app.panel.cock', { cock: cock.id })}</legend>
      <div className="segments">
        {OPENINGS.map((each) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={Math.abs(each - opening) < 0.02}
            onClick={() => session.act({ type: 'turn-cock', cock: cock.id, opening: each })}
          >
            {openingText(each)}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

function openingText(opening: number): string {
  if (opening === 0) return say('app.panel.shut');
  return opening === 1 ? say('app.panel.open') : `${Math.round(opening * 100)} %`;
}
