export { applyFaults, FAULTS, faultsOf, findFault } from './catalogue.ts';
export {
  FAULT_FAMILIES,
  type Fault,
  type FaultFamily,
  ONSET_KINDS,
  type OnsetKind,
  type SeverityRange,
} from './fault.ts';
export { fuseOf, leakPlacesOf, type PlantPart, partsOf, remediesOf } from './plant-parts.ts';
export { HAND_ACTS, type HandAct, REPAIR_WAYS, type Remedy, type RepairWay } from './remedy.ts';
export { type Setting, settingsOf, writeSetting } from './settings.ts';
export type { FaultSubject } from './subject.ts';
