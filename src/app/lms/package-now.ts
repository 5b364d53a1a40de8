/** What the page in a package has to say about its learning system; the strip above the exercise shows it. */
import { createStore } from '../session/store.ts';
import type { Report, SystemMode, SystemTrouble } from './learning-system.ts';

export interface PackageNow {
  readonly mode: SystemMode;
  readonly trouble: SystemTrouble | null;
  /** The work is in what the learning system keeps; otherwise on this device alone. */
  readonly whole: boolean;
  /** The device keeps the work too. */
  readonly onDevice: boolean;
  /** What the learning system had kept could not be read. */
  readonly damaged: boolean;
  /** What it has been told of the outcome. */
  readonly told: Report | null;
  /** That it is passed by now goes to the system at the next session: it takes one judgement each. */
  readonly later: boolean;
  /** Where the learner goes when he is done; null where the system has its own way. */
  readonly returnAddress: string | null;
}

export const packageNow = createStore<PackageNow>({
  mode: 'normal',
  trouble: null,
  whole: true,
  onDevice: true,
  damaged: false,
  told: null,
  later: false,
  returnAddress: null,
});
