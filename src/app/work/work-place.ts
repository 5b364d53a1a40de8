/** Where a piece of work is done: on one's own device, or in a class, which has a shelf and an opening of its own. */
import { createContext, useContext } from 'react';
import type { LearnerLibrary } from '../../scenario/index.ts';
import type { Session, SessionOpening } from '../session/session-types.ts';
import { deviceShelf, type Shelf } from './shelf.ts';
import type { Work } from './work-types.ts';

export interface WorkPlace {
  readonly shelf: Shelf;
  /** What every run here is opened with, beside the exercise itself. */
  readonly opening: Pick<SessionOpening, 'given' | 'seed'>;
  /** An instructor's own exercises, which stand before the shipped ones. */
  readonly given: Partial<LearnerLibrary>;
  /** In a class there is no way out but the strip's, and no branch of finished work. */
  readonly isClass: boolean;
  /** How finished work went, 0 to 1; told as often as it is looked at. */
  ended(outcome: number): void;
  /** Called with each run; what it gives back ends it. */
  attach(session: Session, work: Work): () => void;
}

const ON_THIS_DEVICE: WorkPlace = {
  shelf: deviceShelf,
  opening: {},
  given: {},
  isClass: false,
  ended: () => undefined,
  attach: () => () => undefined,
};

const PlaceContext = createContext<WorkPlace>(ON_THIS_DEVICE);
export const WorkPlaceProvider = PlaceContext.Provider;

export function useWorkPlace(): WorkPlace {
  return useContext(PlaceContext);
}
