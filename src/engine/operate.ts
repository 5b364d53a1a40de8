/** What an action of the log does to panel, cocks, load and faults. */
import { type FaultSubject, findFault, type UndoingAct } from '../faults/index.ts';
import type { Panel } from '../field/index.ts';
import type { Action } from './actions.ts';
import type { PlantState } from './plant-state.ts';
import { insertFault, removeFault, rewriteLive, type StandingFaults } from './standing-faults.ts';

export interface Operated {
  readonly panel: Panel;
  readonly plant: PlantState;
  readonly faults: StandingFaults;
}

/** True when parameters changed, so that derived constants must be prepared anew. */
export function operate(on: Operated, action: Action): boolean {
  const { panel, plant, faults } = on;
  switch (action.type) {
    case 'call-for-heat':
      panel.callForHeat = action.on;
      return false;
    case 'reset':
      panel.resetPressed = action.pressed;
      return false;
    case 'reset-limits':
      panel.limitResetPressed = action.pressed;
      return action.pressed && undo(faults, 'reset-limits');
    case 'emergency-stop':
      panel.emergencyStopPressed = action.pressed;
      return false;
    case 'supply':
      panel.supplyOn = action.on;
      return false;
    case 'second-setpoint':
      panel.secondSetpoint = action.on;
      return false;
    case 'remote-enable':
      panel.remoteEnable = action.on;
      return false;
    case 'firing':
      panel.firingMode = action.mode;
      panel.handRate = action.rate;
      return undo(faults, 'firing');
    case 'set-load':
      plant.load = action.load;
      return false;
    case 'turn-cock':
      setOpening(faults.sound, action.cock, action.opening);
      if (!undo(faults, 'turn-cock')) rewriteLive(faults);
      return true;
    case 'insert-fault':
      insertFault(faults, action.fault, action.severity);
      return true;
    case 'clear-fault':
      return removeFault(faults, action.fault);
  }
}

/** A hand on a thing undoes whatever an earlier hand left there. True when something was undone. */
function undo(faults: StandingFaults, act: UndoingAct): boolean {
  const left = faults.standing.filter((one) => findFault(one.fault)?.undoneBy !== act);
  if (left.length === faults.standing.length) return false;
  faults.standing.splice(0, faults.standing.length, ...left);
  rewriteLive(faults);
  return true;
}

function setOpening(subject: FaultSubject, id: string, opening: number): void {
  for (const edge of subject.gasTrain.edges) {
    if (edge.kind === 'cock' && edge.id === id) edge.opening = opening;
  }
}
