import type { Reasoning } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { percentText } from './share-bars.tsx';

/** What the learner held likely against what the readings had shown by then, in words. */
export function Calibration({ calibration }: Pick<Reasoning, 'calibration'>) {
  if (calibration === null) return <p>{say('debrief.calibration.none')}</p>;
  const { rankings, firstShare, distance } = calibration;
  return (
    <p>
      {say(rankings === 1 ? 'debrief.calibration.first-one' : 'debrief.calibration.first', {
        count: rankings,
        share: percentText(firstShare),
      })}{' '}
      {say(`debrief.calibration.order.${nearness(distance)}`)}
    </p>
  );
}

/** 0 the same order, 1 reversed; chance comes out about the middle. */
function nearness(distance: number): 'near' | 'partly' | 'far' {
  if (distance <= 0.2) return 'near';
  return distance < 0.5 ? 'partly' : 'far';
}
