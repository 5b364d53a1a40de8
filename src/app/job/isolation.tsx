import { say } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import { useSession } from '../working/session-context.tsx';

const ISOLATOR = 'isolator';
/** The second is a crack, to let pressure on slowly. */
const OPENINGS = [0, 0.05, 0.25, 0.5, 1] as const;

/** The isolator and the cocks, each with a padlock of one's own. */
export function Isolation() {
  const session = useSession();
  const bench = useStorePart(session.atThePlant, (state) => state.bench);
  if (bench === null) return null;
  const { supplyOn, locks, cocks } = bench;
  const isLocked = (point: string) => locks.includes(point);
  return (
    <div className="isolation">
      <section aria-label={say('job.isolate.isolator')}>
        <h4>
          {say('job.isolate.isolator')}{' '}
          <Stands
            text={say(supplyOn ? 'job.isolate.is-on' : 'job.isolate.is-off')}
            locked={isLocked(ISOLATOR)}
          />
        </h4>
        <div className="buttons">
          <button
            type="button"
            className="button"
            disabled={isLocked(ISOLATOR)}
            onClick={() => session.perform({ type: 'supply', on: !supplyOn })}
          >
            {say(supplyOn ? 'job.isolate.off' : 'job.isolate.on')}
          </button>
          <Lock
            point={ISOLATOR}
            name={say('job.isolate.isolator')}
            locked={isLocked(ISOLATOR)}
            disabled={supplyOn && !isLocked(ISOLATOR)}
          />
        </div>
        <p className="caution">{say('job.isolate.dead-caution')}</p>
      </section>
      {cocks.map(({ id, opening }) => {
        const name = cockName(id);
        return (
          <section key={id} aria-label={name}>
            <h4>
              {name}{' '}
              <Stands
                text={say('job.isolate.opening', { percent: Math.round(opening * 100) })}
                locked={isLocked(id)}
              />
            </h4>
            <div className="buttons">
              <div className="segments">
                {OPENINGS.map((each) => (
                  <button
                    key={each}
                    type="button"
                    className="button"
                    aria-pressed={Math.abs(each - opening) < 0.02}
                    aria-label={say('job.isolate.turn', { act: openingText(each), cock: name })}
                    disabled={isLocked(id)}
                    onClick={() => session.perform({ type: 'turn-cock', cock: id, opening: each })}
                  >
                    {openingText(each)}
                  </button>
                ))}
              </div>
              <Lock point={id} name={name} locked={isLocked(id)} disabled={false} />
            </div>
          </section>
        );
      })}
    </div>
  );
}

function Lock(props: {
  readonly point: string;
  readonly name: string;
  readonly locked: boolean;
  readonly disabled: boolean;
}) {
  const session = useSession();
  const { point, name, locked, disabled } = props;
  return (
    <button
      type="button"
      className="button"
      aria-label={say(locked ? 'job.isolate.unlock-it' : 'job.isolate.lock-it', { point: name })}
      disabled={disabled}
      onClick={() => session.perform({ type: 'lock', point, on: !locked })}
    >
      {say(locked ? 'job.isolate.unlock' : 'job.isolate.lock')}
    </button>
  );
}

function Stands({ text, locked }: { readonly text: string; readonly locked: boolean }) {
  return (
    <span className="stands" data-locked={locked}>
      {locked ? `${text}, ${say('job.isolate.locked')}` : text}
    </span>
  );
}

function cockName(id: string): string {
  return id === 'cock'
    ? say('job.isolate.manual-cock')
    : say('job.isolate.cock', { cock: id.replace(/-/g, ' ') });
}

function openingText(opening: number): string {
  if (opening === 0) return say('app.panel.shut');
  return opening === 1 ? say('app.panel.open') : `${Math.round(opening * 100)} %`;
}
