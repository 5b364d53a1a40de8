export * from './burner/index.ts';
export * from './class/index.ts';
export { createSimulatedClock, type SimulatedClock } from './clock.ts';
export * from './job/index.ts';
export * from './quiz/index.ts';
