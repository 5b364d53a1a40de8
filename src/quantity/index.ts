export * from './display.ts';
export * from './parameters.ts';
export * from './units.ts';
