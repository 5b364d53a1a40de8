export * from './parameters.ts';
export * from './units.ts';
