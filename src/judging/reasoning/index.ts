// By itself: a plant that is only run never loads the diagnosis.
export { createReasoner, type Reasoner } from './reasoner.ts';
