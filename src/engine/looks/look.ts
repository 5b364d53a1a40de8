import type { RunState } from '../run-state.ts';
import {
  lookAtBelt,
  lookAtBlade,
  lookAtContactor,
  lookAtDisplay,
  lookAtEndSwitch,
  lookAtFlue,
  lookAtPasses,
  lookAtPointer,
  lookAtRoomOpenings,
  lookAtRotation,
  lookAtScreen,
  lookAtStackDamper,
  lookAtTube,
} from './look-at-air.ts';
import {
  lookAlongScanner,
  lookAtDiffuser,
  lookAtElectrode,
  lookAtFlame,
  lookAtLead,
  lookAtLens,
  lookAtNozzle,
  lookAtPilot,
  lookAtPilotBurner,
  lookAtRod,
  lookAtSpark,
} from './look-at-burner.ts';
import {
  lookAtBreather,
  lookAtCocks,
  lookAtFuelValveShaft,
  lookAtIndicator,
  lookAtJoints,
  lookAtProofSwitch,
  lookAtStrainer,
} from './look-at-gas.ts';
import { lookAtClock, lookAtFuses, lookAtRelays, lookAtSwitches } from './look-at-panel.ts';
import { lookAtTerminals } from './look-at-terminals.ts';
import {
  lookAtDrain,
  lookAtFeedValve,
  lookAtGauge,
  lookAtGlass,
  lookAtLimits,
  lookAtProbe,
  lookAtPump,
  lookAtSafetyValve,
} from './look-at-vessel.ts';
import {
  LOOK_WHATS,
  type LookOptions,
  type LookReading,
  type LookWhat,
  type Seen,
} from './look-reading.ts';

const EYES: Readonly<Record<LookWhat, (run: RunState, options: LookOptions) => Seen | null>> = {
  'sight glass': lookAtFlame,
  'pilot flame': lookAtPilot,
  spark: lookAtSpark,
  'manual cock': lookAtCocks,
  strainer: lookAtStrainer,
  'regulator breather': lookAtBreather,
  'upstream valve indicator': (run) => lookAtIndicator(run, 'upstream'),
  'downstream valve indicator': (run) => lookAtIndicator(run, 'downstream'),
  'vent valve indicator': (run) => lookAtIndicator(run, 'vent'),
  'upstream valve proof switch': (run) => lookAtProofSwitch(run, 'upstream'),
  'downstream valve proof switch': (run) => lookAtProofSwitch(run, 'downstream'),
  'fuel valve shaft': lookAtFuelValveShaft,
  'gas joints': lookAtJoints,
  'damper blade': lookAtBlade,
  'damper servo pointer': (run) => lookAtPointer(run, 'damper'),
  'fuel valve servo pointer': (run) => lookAtPointer(run, 'fuelValve'),
  'purge end switch': lookAtEndSwitch,
  'drive display': lookAtDisplay,
  belt: lookAtBelt,
  'fan rotation': lookAtRotation,
  'fan contactor': lookAtContactor,
  'air switch tube': lookAtTube,
  'air inlet screen': lookAtScreen,
  'boiler room openings': lookAtRoomOpenings,
  flue: lookAtFlue,
  'stack damper': lookAtStackDamper,
  'boiler passes': lookAtPasses,
  electrode: lookAtElectrode,
  'ignition lead': lookAtLead,
  lens: lookAtLens,
  'scanner sight line': lookAlongScanner,
  'flame rod': lookAtRod,
  'pilot burner': lookAtPilotBurner,
  nozzle: lookAtNozzle,
  diffuser: lookAtDiffuser,
  'gauge glass': lookAtGlass,
  'boiler gauge': lookAtGauge,
  'limit buttons': lookAtLimits,
  'level probe': lookAtProbe,
  'feed valve': lookAtFeedValve,
  'water pump': lookAtPump,
  'safety valve': lookAtSafetyValve,
  'blow-down drain': lookAtDrain,
  'panel switches': lookAtSwitches,
  'time clock': lookAtClock,
  fuses: lookAtFuses,
  'control relays': lookAtRelays,
  'terminal strip': lookAtTerminals,
};

/** Null where this plant has no such thing. */
export function look(run: RunState, what: LookWhat, options: LookOptions = {}): LookReading | null {
  const found = EYES[what]?.(run, options) ?? null;
  return found === null ? null : { what, ...found };
}

/** What there is to look at on this plant; the same whatever stands. */
export function lookPlacesOf(run: RunState): readonly LookWhat[] {
  return LOOK_WHATS.filter((what) => EYES[what](run, {}) !== null);
}
