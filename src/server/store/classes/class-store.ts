import type { ClassStore, Database } from '../types.ts';
import { keepClasses } from './keep-classes.ts';
import { keepEntries } from './keep-entries.ts';
import { keepPolls } from './keep-polls.ts';
import { keepResults } from './keep-results.ts';
import { keepSeats } from './keep-seats.ts';
import { keepWorks } from './keep-works.ts';

/** Everything that is kept of classes, in one database. */
export function createClassStore(database: Database): ClassStore {
  return {
    database,
    ...keepClasses(database),
    ...keepEntries(database),
    ...keepSeats(database),
    ...keepWorks(database),
    ...keepPolls(database),
    ...keepResults(database),
  };
}
