export {
  type ChebyshevSeries,
  chebyshevFit,
  chebyshevToPowers,
  evaluateChebyshev,
  evaluatePolynomial,
} from './chebyshev.ts';
export { exactExp, exactLog, exactPow } from './exponential.ts';
export {
  type CurveTable,
  createLinearTable,
  createMonotoneTable,
  readTable,
} from './interpolation.ts';
export {
  createRandom,
  nextNormal,
  nextUniform,
  nextWord,
  type RandomState,
  shuffled,
} from './random.ts';
export {
  addNumber,
  addNumbers,
  addText,
  addWords,
  createHash,
  digest,
  type HashState,
} from './run-hash.ts';
export { scramble, seedFromText } from './seed.ts';
export { exactCos, exactSin } from './trigonometry.ts';
