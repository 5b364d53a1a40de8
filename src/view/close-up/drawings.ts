import type { LookReading, LookWhat } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import {
  drawBelt,
  drawBlade,
  drawContactor,
  drawDisplay,
  drawEndSwitch,
  drawPointer,
  drawPump,
  drawRotation,
  drawScreen,
  drawTube,
} from './draw-air.ts';
import {
  drawDiffuser,
  drawElectrode,
  drawLead,
  drawLens,
  drawPilotBurner,
  drawRod,
} from './draw-burner.ts';
import { drawPilot, drawSightGlass, drawSightLine, drawSpark } from './draw-flame.ts';
import {
  drawBreather,
  drawCocks,
  drawJoints,
  drawOpening,
  drawProofSwitch,
  drawShaft,
  drawStrainer,
  drawValveIndicator,
  drawWay,
} from './draw-gas.ts';
import { drawSwitches } from './draw-panel.ts';
import { drawTerminals } from './draw-terminals.ts';
import {
  drawClock,
  drawDrain,
  drawFuses,
  drawGauge,
  drawGlass,
  drawLimits,
  drawProbe,
  drawRelays,
  drawSafetyValve,
} from './draw-vessel.ts';
import type { Drawer } from './types.ts';

const DRAWERS: Readonly<Record<LookWhat, Drawer>> = {
  'sight glass': drawSightGlass,
  'pilot flame': drawPilot,
  spark: drawSpark,
  'manual cock': drawCocks,
  strainer: drawStrainer,
  'regulator breather': drawBreather,
  'upstream valve indicator': drawValveIndicator,
  'downstream valve indicator': drawValveIndicator,
  'vent valve indicator': drawValveIndicator,
  'upstream valve proof switch': drawProofSwitch,
  'downstream valve proof switch': drawProofSwitch,
  'fuel valve shaft': drawShaft,
  'gas joints': drawJoints,
  'damper blade': drawBlade,
  'damper servo pointer': drawPointer,
  'fuel valve servo pointer': drawPointer,
  'purge end switch': drawEndSwitch,
  'drive display': drawDisplay,
  belt: drawBelt,
  'fan rotation': drawRotation,
  'fan contactor': drawContactor,
  'air switch tube': drawTube,
  'air inlet screen': drawScreen,
  'boiler room openings': drawScreen,
  flue: drawWay,
  'stack damper': drawOpening,
  'boiler passes': drawWay,
  electrode: drawElectrode,
  'ignition lead': drawLead,
  lens: drawLens,
  'scanner sight line': drawSightLine,
  'flame rod': drawRod,
  'pilot burner': drawPilotBurner,
  nozzle: drawWay,
  diffuser: drawDiffuser,
  'gauge glass': drawGlass,
  'boiler gauge': drawGauge,
  'limit buttons': drawLimits,
  'level probe': drawProbe,
  'feed valve': drawOpening,
  'water pump': drawPump,
  'safety valve': drawSafetyValve,
  'blow-down drain': drawDrain,
  'panel switches': drawSwitches,
  'time clock': drawClock,
  fuses: drawFuses,
  'control relays': drawRelays,
  'terminal strip': drawTerminals,
};

/** The inside of the drawing of a look. */
export function drawLook(reading: LookReading, message: Message): string {
  return DRAWERS[reading.what]({ reading, message });
}
