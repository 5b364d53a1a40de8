import { type GivenLibrary, withGiven } from '../../judging/work/index.ts';
import { type LearnerLibrary, readGiven } from '../../scenario/index.ts';
import { openFailure } from './host-ports.ts';

/**
 * The shipped library with what an instructor gave laid over it.
 *
 * @throws openFailure that names the place of what does not fit
 */
export function libraryWith(library: LearnerLibrary, given: unknown): LearnerLibrary {
  if (given === undefined) return library;
  const read = readGiven(given);
  if (!read.ok) throw openFailure('scenario does not load', `${read.place}: ${read.message}`);
  return withGiven(library, read.given satisfies GivenLibrary);
}
