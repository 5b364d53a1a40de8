export { paperQuestion, paperWords } from './paper-words.ts';
export { resultWords } from './result-words.ts';
