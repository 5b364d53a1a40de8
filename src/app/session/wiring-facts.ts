import { describeWiring, type PlantFile } from '../../engine/index.ts';
import type { WiringFacts } from './protocol.ts';

/** The wiring of a plant as the ladder needs it: wires and elements in the order of their bits. */
export function wiringFacts(plant: PlantFile): WiringFacts {
  const { sources } = plant.wiring;
  const { wires, elements, rungs } = describeWiring(plant);
  const operators = operatorsOf(plant);
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
      return operator === undefined ? { name, kind } : { name, kind, operator };
    }),
    rungs: rungs.map((rung) => [...rung]),
  };
}

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
  for (const { id } of field.relays) {
    found.set(`${id}.contact`, 'relay');
    found.set(`${id}.feedback`, 'relay');
  }
  for (const { id } of field.servos) found.set(`${id}.end-switch`, 'position');
  return found;
}
