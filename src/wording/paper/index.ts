export { paperQuestion, paperWords } from './paper-words.ts';
export { resultWords } from './result-words.ts';
export { xapiWords } from './xapi-words.ts';
