export { lintFindingWords } from './lint-finding-words.ts';
export { LINT_VOCABULARY } from './lint-vocabulary.ts';
export { namesOfPlant } from './names-of-plant.ts';
export { type StartEvent, startWords } from './start-words.ts';
export { listWords, statementWords } from './statement-words.ts';
export { wordItem } from './word-item.ts';
