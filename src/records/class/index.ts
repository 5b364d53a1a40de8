/** What leaves of a class's results. Entered by itself: reading them needs nothing else of what leaves. */
export * from './class-csv.ts';
export * from './class-result.ts';
export * from './class-xapi.ts';
export * from './practice-record.ts';
export * from './summary.ts';
