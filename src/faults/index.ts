export { applyFaults, FAULTS, faultsOf, findFault } from './catalogue.ts';
export {
  FAULT_FAMILIES,
  type Fault,
  type FaultFamily,
  ONSET_KINDS,
  type OnsetKind,
  type SeverityRange,
  type UndoingAct,
} from './fault.ts';
export type { FaultSubject } from './subject.ts';
