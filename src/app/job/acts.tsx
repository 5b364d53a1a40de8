import type { ReactNode } from 'react';
import { say } from '../../i18n/index.ts';
import { servosOfPlant } from '../library/exercises.ts';
import { PanelTab } from '../working/panel-tab.tsx';
import { useFacts, useSessionPart } from '../working/session-context.tsx';
import { AdjustForm } from './adjust-form.tsx';
import { Isolation } from './isolation.tsx';
import { JumperForm } from './jumper-form.tsx';
import { RepairForm } from './repair-form.tsx';
import { StrokeForm } from './stroke-form.tsx';

/** Everything hands can do at the plant. */
export function Acts() {
  const servos = servosOfPlant(useFacts().scenario.plant);
  const lookingBack = useSessionPart((state) => state.lookingBack);
  return (
    <div className="acts">
      {lookingBack ? <p className="panel-note">{say('job.acts.looking-back')}</p> : null}
      <Fold title={say('job.acts.panel')} open={true}>
        <PanelTab atWork={true} />
      </Fold>
      <Fold title={say('job.acts.isolate')}>
        <Isolation />
      </Fold>
      <Fold title={say('job.acts.repair')}>
        <RepairForm />
      </Fold>
      <Fold title={say('job.acts.adjust')}>
        <AdjustForm />
      </Fold>
      <Fold title={say('job.acts.jumper')}>
        <JumperForm />
      </Fold>
      {servos.length === 0 ? null : (
        <Fold title={say('job.acts.stroke')}>
          <StrokeForm servos={servos} />
        </Fold>
      )}
    </div>
  );
}

function Fold(props: {
  readonly title: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <details className="fold" name="acts" open={props.open === true}>
      <summary>{props.title}</summary>
      <div className="fold-inside">{props.children}</div>
    </details>
  );
}
