export { arrivedS } from './arrived.ts';
export type { ConductFinding } from './finding.ts';
export { jointsOf } from './gas-places.ts';
export { INSIDE_PARTS, LOOKS_INSIDE } from './inside-work.ts';
export { lessSafe } from './interlocks.ts';
export { conductOf, judgeConduct } from './judge-conduct.ts';
export { lookedAt } from './looked-at.ts';
export { type MinutesLine, type MinutesUsed, minutesOf } from './minutes-of.ts';
export { PANEL_CHANNELS } from './panel-channels.ts';
export {
  HOLDS_S,
  PROOF_IDS,
  type Proof,
  type ProofId,
  type ProofItem,
  proofFrom,
  proofOf,
} from './proof-of.ts';
export { type SheetRow, sheetOf } from './sheet-of.ts';
export { CHECKS, type Check, checkOfWhat, RISKS, type Risk } from './tariff.ts';
export { traceJob } from './trace-job.ts';
export type { JobTrace } from './trace-types.ts';
export { wholeLog } from './whole-log.ts';
