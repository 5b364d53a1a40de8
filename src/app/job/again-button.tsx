import { say } from '../../i18n/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import { useExercise } from './exercise-context.tsx';

/** Asked twice: what was done is put aside. */
export function AgainButton() {
  const { startAnew } = useExercise();
  return (
    <SureButton
      label={say('debrief.again')}
      ask={say('debrief.again-sure')}
      sure={say('work.begin-anew')}
      keep={say('debrief.again-not')}
      onSure={startAnew}
    />
  );
}
