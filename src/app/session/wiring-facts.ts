import { describeWiring, type PlantFile } from '../../engine/index.ts';
import type { WiringFacts } from './protocol.ts';

/** The wiring of a plant as the ladder needs it: wires and elements in the order of their bits. */
export function wiringFacts(plant: PlantFile): WiringFacts {
  const { sources } = plant.wiring;
  const { wires, elements, rungs } = describeWiring(plant);
  const operators = operatorsOf(plant);
  const breaks = breakContactsOf(plant);
  return {
    sources: sources.map(({ live, neutral, kind, volts }) => ({
      live,
      neutral,
      kind,
      volts: kind === 'direct' ? volts : plant.field.supply.mainsVolts,
    })),
    wires: [...wires],
    elements: elements.map(({ name, kind }) => {
      const operator = kind === 'contact' ? operators.get(name) : undefined;
      return {
        name,
        kind,
        ...(operator === undefined ? {} : { operator }),
        ...(breaks.has(name) ? { breaks: true } : {}),
        ...(name === PUMP && plant.vessel.kind === 'hot water' ? { called: HEATING_PUMP } : {}),
      };
    }),
    rungs: rungs.map((rung) => [...rung]),
  };
}

/** What moves the water of a heating system is the pump of the vessel all the same. */
const PUMP = 'feed-pump';
const HEATING_PUMP = 'circulating-pump';

type Operator = NonNullable<WiringFacts['elements'][number]['operator']>;

function operatorsOf({ field }: PlantFile): ReadonlyMap<string, Operator> {
  const found = new Map<string, Operator>([
    ['isolator', 'hand switch'],
    ['burner-switch', 'hand switch'],
    ['second-setpoint', 'hand switch'],
    ['emergency-stop', 'stop button'],
    ['reset-button', 'push button'],
  ]);
  const all = (devices: readonly { readonly id: string }[], operator: Operator): void => {
    for (const { id } of devices) found.set(id, operator);
  };
  all(field.switches, 'pressure');
  all(field.temperatureSwitches, 'temperature');
  all(field.waterCutOffs, 'level');
  all(field.closedProofs, 'position');
  all(field.timeClocks, 'clock');
  all(field.remoteContacts, 'relay');
  for (const { id, kind } of field.feedControls) {
    if (kind === 'on-off') found.set(`${id}.pump`, 'level');
  }
  for (const { id } of field.relays) {
    found.set(`${id}.contact`, 'relay');
    found.set(`${id}.feedback`, 'relay');
  }
  for (const { id } of field.servos) found.set(`${id}.end-switch`, 'position');
  return found;
}

/** Contacts that pressing, or the rise of what they feel, opens. */
function breakContactsOf({ field }: PlantFile): ReadonlySet<string> {
  const onFall = [...field.switches, ...field.temperatureSwitches]
    .filter(({ makesOn }) => makesOn === 'fall')
    .map(({ id }) => id);
  return new Set(['emergency-stop', ...onFall]);
}
