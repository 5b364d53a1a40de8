import type { HistoryEvent } from '../session/protocol.ts';

export interface ControlsAt {
  readonly callForHeat: boolean;
  readonly resetPressed: boolean;
  readonly emergencyStop: boolean;
  readonly supply: boolean;
  readonly limitResetPressed: boolean;
  readonly secondSetpoint: boolean;
  readonly remoteEnable: boolean;
  readonly firing: { readonly mode: 'automatic' | 'hand' | 'low fire'; readonly rate: number };
  readonly standingFaults: readonly { readonly fault: string; readonly severity: number }[];
}

const AT_REST: ControlsAt = {
  callForHeat: false,
  resetPressed: false,
  emergencyStop: false,
  supply: true,
  limitResetPressed: false,
  secondSetpoint: false,
  remoteEnable: true,
  firing: { mode: 'automatic', rate: 0 },
  standingFaults: [],
};

/** How the panel's switches stood at a moment: what was done up to then, and nothing else. */
export function controlsAt(events: readonly HistoryEvent[], tS: number): ControlsAt {
  let at = AT_REST;
  for (const event of events) {
    if (event.t > tS + 1e-6) break;
    if (event.type === 'fault') {
      at = event.on
        ? withFault(at, event.fault, event.severity)
        : { ...at, standingFaults: without(at, event.fault) };
    } else if (event.type === 'action') {
      at = after(at, event);
    }
  }
  return at;
}

function after(at: ControlsAt, { action }: Extract<HistoryEvent, { type: 'action' }>): ControlsAt {
  switch (action.type) {
    case 'call-for-heat':
      return { ...at, callForHeat: action.on };
    case 'reset':
      return { ...at, resetPressed: action.pressed };
    case 'emergency-stop':
      return { ...at, emergencyStop: action.pressed };
    case 'supply':
      return { ...at, supply: action.on };
    case 'firing':
      return { ...at, firing: { mode: action.mode, rate: action.rate } };
    case 'reset-limits':
      return { ...at, limitResetPressed: action.pressed };
    case 'second-setpoint':
      return { ...at, secondSetpoint: action.on };
    case 'remote-enable':
      return { ...at, remoteEnable: action.on };
    case 'insert-fault':
      return withFault(at, action.fault, action.severity);
    case 'clear-fault':
      return { ...at, standingFaults: without(at, action.fault) };
    default:
      return at;
  }
}

function withFault(at: ControlsAt, fault: string, severity: number): ControlsAt {
  return { ...at, standingFaults: [...without(at, fault), { fault, severity }] };
}
function without(at: ControlsAt, fault: string) {
  return at.standingFaults.filter((standing) => standing.fault !== fault);
}
