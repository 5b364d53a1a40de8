import { useId, useMemo } from 'react';
import type { Action, ActionType } from '../../engine/index.ts';
import { say } from '../../i18n/index.ts';
import { type ControlsAt, controlsAt } from '../reading/controls-at.ts';
import { readChannel } from '../reading/waits-at.ts';
import { CockControl } from './cock-control.tsx';
import { LaggingSlider } from './lagging-slider.tsx';
import { PressButton } from './press-button.tsx';
import { useFacts, useSession, useSessionPart } from './session-context.tsx';

/** Switches as the wiring names them; not every plant has them. */
const SECOND_SETPOINT = 'second-setpoint';
const REMOTE_ENABLE = 'remote-enable';
const FIRING_MODES = ['automatic', 'low fire', 'hand'] as const;

interface Props {
  /** On a job isolator and cocks stand with their locks, and nobody turns the load up or down. */
  readonly atWork?: boolean;
}

/** The panel of the plant: everything a person standing before it could do. */
export function PanelTab({ atWork = false }: Props) {
  const facts = useFacts();
  const session = useSession();
  const events = useSessionPart((state) => state.events);
  const shownS = useSessionPart((state) => state.shownS);
  const lookingBack = useSessionPart((state) => state.lookingBack);
  const at = useMemo(() => controlsAt(events, shownS), [events, shownS]);
  const may = (type: ActionType) => facts.allow === null || facts.allow.includes(type);
  const act = (action: Action) => session.perform(action);
  const wired = (switchName: string) =>
    facts.wiring.elements.some(({ name }) => name === switchName);
  return (
    <div className="panel">
      {lookingBack && !atWork ? (
        <p className="panel-note">{say('app.panel.looking-back')}</p>
      ) : null}
      <div className="panel-switches">
        <button
          type="button"
          className="button"
          aria-pressed={at.callForHeat}
          disabled={!may('call-for-heat')}
          onClick={() => act({ type: 'call-for-heat', on: !at.callForHeat })}
        >
          {say('app.panel.heat')}
        </button>
        <Push button="reset" pressed={at.resetPressed} disabled={!may('reset')} />
        <button
          type="button"
          className="button warn"
          aria-pressed={at.emergencyStop}
          disabled={!may('emergency-stop')}
          onClick={() => act({ type: 'emergency-stop', pressed: !at.emergencyStop })}
        >
          {say(at.emergencyStop ? 'app.panel.stop-release' : 'app.panel.stop')}
        </button>
        {atWork ? null : (
          <button
            type="button"
            className="button"
            aria-pressed={at.supply}
            disabled={!may('supply')}
            onClick={() => act({ type: 'supply', on: !at.supply })}
          >
            {say('app.panel.supply')}
          </button>
        )}
        {facts.hasLimitReset ? (
          <Push
            button="reset-limits"
            pressed={at.limitResetPressed}
            disabled={!may('reset-limits')}
          />
        ) : null}
        {wired(SECOND_SETPOINT) ? (
          <button
            type="button"
            className="button"
            aria-pressed={at.secondSetpoint}
            disabled={!may('second-setpoint')}
            onClick={() => act({ type: 'second-setpoint', on: !at.secondSetpoint })}
          >
            {say('app.panel.setpoint')}
          </button>
        ) : null}
        {wired(REMOTE_ENABLE) ? (
          <button
            type="button"
            className="button"
            aria-pressed={at.remoteEnable}
            disabled={!may('remote-enable')}
            onClick={() => act({ type: 'remote-enable', on: !at.remoteEnable })}
          >
            {say('app.panel.remote')}
          </button>
        ) : null}
      </div>
      {atWork ? null : <Load disabled={!may('set-load')} />}
      <Firing at={at} disabled={!may('firing')} />
      {atWork
        ? null
        : facts.cocks.map((cock) => (
            <CockControl key={cock.id} cock={cock} disabled={!may('turn-cock')} />
          ))}
      <p className="caution">
        <strong>{say('app.caution.short')}</strong> {say('app.caution.panel')}
      </p>
    </div>
  );
}

function Push(props: {
  readonly button: 'reset' | 'reset-limits';
  readonly pressed: boolean;
  readonly disabled: boolean;
}) {
  const { button, pressed, disabled } = props;
  const session = useSession();
  const id = useId();
  const word = button === 'reset' ? 'reset' : 'limits';
  return (
    <>
      <PressButton
        pressed={pressed}
        disabled={disabled}
        describedBy={id}
        onPress={() => session.perform({ type: button, pressed: true })}
        onRelease={() => session.perform({ type: button, pressed: false })}
      >
        {say(`app.panel.${word}`)}
      </PressButton>
      <span id={id} className="for-readers">
        {say(`app.panel.${word}-how`)}
      </span>
    </>
  );
}

function Load({ disabled }: { readonly disabled: boolean }) {
  const facts = useFacts();
  const session = useSession();
  const frame = session.shownFrame();
  const load = frame === null ? 0 : (readChannel(facts, frame, 'vessel.load') ?? 0);
  return (
    <LaggingSlider
      label={say('app.panel.load')}
      value={load}
      disabled={disabled}
      onSet={(value) => session.perform({ type: 'set-load', load: value })}
    />
  );
}

function Firing({ at, disabled }: { readonly at: ControlsAt; readonly disabled: boolean }) {
  const session = useSession();
  const { mode, rate } = at.firing;
  return (
    <fieldset className="firing" disabled={disabled}>
      <legend>{say('app.panel.firing')}</legend>
      <div className="segments">
        {FIRING_MODES.map((each) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === mode}
            onClick={() => session.perform({ type: 'firing', mode: each, rate })}
          >
            {say(`app.panel.firing.${each === 'low fire' ? 'low-fire' : each}`)}
          </button>
        ))}
      </div>
      {mode === 'hand' ? (
        <LaggingSlider
          label={say('app.panel.rate')}
          value={rate}
          disabled={disabled}
          onSet={(value) => session.perform({ type: 'firing', mode: 'hand', rate: value })}
        />
      ) : null}
    </fieldset>
  );
}
