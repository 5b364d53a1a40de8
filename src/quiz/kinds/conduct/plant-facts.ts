/** What scenes must know of a plant: its parts, dials and contacts, and how a sound start goes. */
import {
  createRun,
  type DescribedElement,
  describeWiring,
  type LookWhat,
  type PlantPart,
  type Setting,
} from '../../../engine/index.ts';
import type { QuizPlant } from '../../item/maker.ts';

export interface PlantFacts {
  readonly plant: QuizPlant;
  readonly parts: readonly PlantPart[];
  readonly settings: readonly Setting[];
  readonly elements: readonly DescribedElement[];
  readonly looks: readonly LookWhat[];
  /** Heat is called for then, s. */
  readonly callS: number;
  /** From the call for heat into service and a little on, s. */
  readonly startS: number;
  /** When each step of a sound start began, s. */
  readonly stepsS: Readonly<Record<string, number>>;
  /** Gas nodes under pressure while the burner is at rest, the cock open. */
  readonly underPressure: readonly string[];
}

const LITTLE_ON_S = 20;
/** Well above what leak spray needs, Pa. */
const PRESSED_PA = 1000;

const known = new WeakMap<QuizPlant, PlantFacts>();

export function factsOf(plant: QuizPlant): PlantFacts {
  const facts = known.get(plant) ?? readFacts(plant);
  known.set(plant, facts);
  return facts;
}

function readFacts(plant: QuizPlant): PlantFacts {
  const { setup, serviceS } = plant.plan;
  const callS = setup.actions[0]?.t ?? 0;
  const run = createRun(setup, { keep: 'hash only' });
  run.advanceTo(callS);
  const frame = run.frame(run.frameCount() - 1);
  const underPressure = setup.plant.gasTrain.nodes.flatMap(({ id }) => {
    const at = run.channels.findIndex((channel) => channel.id === `gas.${id}.pressure`);
    return (frame[at] ?? 0) >= PRESSED_PA ? [id] : [];
  });
  run.advanceTo(serviceS + 1);
  const stepsS: Record<string, number> = {};
  for (const event of run.events()) {
    if (event.type === 'step' && stepsS[event.step] === undefined) stepsS[event.step] = event.t;
  }
  return {
    plant,
    parts: run.parts(),
    settings: run.settings(),
    elements: describeWiring(setup.plant).elements,
    looks: run.lookPlaces(),
    callS,
    startS: Math.ceil(serviceS - callS) + LITTLE_ON_S,
    stepsS,
    underPressure,
  };
}
