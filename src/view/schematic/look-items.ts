import type { LookWhat } from '../../engine/index.ts';
import type { SchematicPlant } from './plant.ts';

type ItemOf = string | ((plant: SchematicPlant) => string);

const servo: ItemOf = ({ hasOneServo }) => (hasOneServo === true ? 'servo' : 'damper');
const firstOf =
  (kind: string): ItemOf =>
  ({ gasTrain }) =>
    gasTrain.edges.find((edge) => edge.kind === kind)?.id ?? '';

/** The item of the drawing beside which a place to look at lies; what is on the panel has none. */
const ITEMS: Readonly<Record<LookWhat, ItemOf>> = {
  'sight glass': 'burner',
  'pilot flame': 'burner',
  spark: 'burner',
  'manual cock': firstOf('cock'),
  strainer: firstOf('strainer'),
  'regulator breather': firstOf('regulator'),
  'upstream valve indicator': 'upstream-valve',
  'downstream valve indicator': 'downstream-valve',
  'vent valve indicator': 'vent-valve',
  'upstream valve proof switch': 'upstream-valve',
  'downstream valve proof switch': 'downstream-valve',
  'fuel valve shaft': firstOf('control'),
  'gas joints': firstOf('regulator'),
  'damper blade': 'damper',
  'damper servo pointer': servo,
  'fuel valve servo pointer': firstOf('control'),
  'purge end switch': servo,
  'drive display': 'drive',
  belt: ({ hasVariableSpeedFan }) => (hasVariableSpeedFan ? 'fan' : 'motor'),
  'fan rotation': 'fan',
  'fan contactor': ({ hasVariableSpeedFan }) => (hasVariableSpeedFan ? 'drive' : 'contactor'),
  'air switch tube': 'air-switch',
  'air inlet screen': 'inlet-screen',
  'boiler room openings': 'inlet-screen',
  flue: 'stack',
  'stack damper': 'stack',
  'boiler passes': 'vessel',
  electrode: 'burner',
  'ignition lead': 'burner',
  lens: 'flame-sensor',
  'scanner sight line': 'flame-sensor',
  'flame rod': 'flame-sensor',
  'pilot burner': 'burner',
  nozzle: 'burner',
  diffuser: 'burner',
  'gauge glass': 'level-gauge',
  'boiler gauge': 'vessel',
  'limit buttons': 'vessel',
  'level probe': 'vessel',
  'feed valve': 'vessel',
  'water pump': ({ vesselKind }) => (vesselKind === 'hot water' ? 'pump' : 'vessel'),
  'safety valve': 'vessel',
  'blow-down drain': 'vessel',
  'panel switches': '',
  'time clock': '',
  fuses: '',
  'control relays': '',
  'terminal strip': '',
};

export function lookItem(what: LookWhat, plant: SchematicPlant): string {
  const item = ITEMS[what];
  return typeof item === 'string' ? item : item(plant);
}
