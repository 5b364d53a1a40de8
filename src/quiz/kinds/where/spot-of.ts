/** Which thing of the drawing a cause lies at: by the part that is mended, where the drawing has it. */
import type { PlantFile } from '../../../engine/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { componentOf, mendedAt } from '../cause/parts.ts';

/** Whether the drawing of a plant shows a thing of its own for it. */
type Drawn = (plant: PlantFile) => boolean;

const hasDrive: Drawn = ({ variant }) => variant.fan === 'variable speed';
export const hasOneServo: Drawn = ({ field }) =>
  field.servos.some(({ moves }) => moves === 'damper and fuel valve');
const hasGauge: Drawn = ({ vessel }) => vessel.kind !== 'hot water';
const hasPump: Drawn = ({ vessel }) => vessel.kind === 'hot water';
const always: Drawn = () => true;
const not =
  (drawn: Drawn): Drawn =>
  (plant) =>
    !drawn(plant);

/**
 * Things that stand where they can be pointed at. What is in the panel or has no symbol is not here, and
 * no wiring either: it ends at two places.
 */
const SPOTS: readonly (readonly [spot: string, parts: readonly string[], drawn: Drawn])[] = [
  ['cock', ['manual gas cock', 'cock joint'], always],
  ['strainer', ['strainer', 'strainer joint'], always],
  ['regulator', ['gas regulator', 'regulator breather', 'regulator joint'], always],
  [
    'upstream-valve',
    ['upstream valve', 'upstream valve coil', 'upstream valve proof of closure'],
    always,
  ],
  [
    'downstream-valve',
    ['downstream valve', 'downstream valve coil', 'downstream valve proof of closure'],
    always,
  ],
  ['vent-valve', ['vent valve', 'vent valve coil'], always],
  ['pilot-valve', ['pilot valve', 'pilot valve coil'], always],
  ['pilot-regulator', ['pilot regulator'], always],
  ['fuel-valve', ['fuel control valve', 'fuel control valve coupling', 'fuel valve joint'], always],
  ['fuel-valve', ['fuel valve servo'], not(hasOneServo)],
  ['servo', ['damper servo', 'damper servo feedback'], hasOneServo],
  ['damper', ['damper servo', 'damper servo feedback'], not(hasOneServo)],
  ['damper', ['air damper'], always],
  ['inlet-screen', ['air inlet screen'], always],
  ['fan', ['fan belt', 'fan speed pick-up'], always],
  ['drive', ['fan drive'], hasDrive],
  ['contactor', ['fan contactor'], not(hasDrive)],
  ['air-switch', ['airflow switch', 'airflow switch tube'], always],
  ['burner', ['ignition electrode', 'ignition lead'], always],
  ['burner', ['pilot burner', 'burner head', 'main gas nozzle'], always],
  ['flame-sensor', ['scanner', 'flame rod'], always],
  ['stack', ['flue', 'stack damper'], always],
  ['vessel', ['boiler passes', 'heating surface'], always],
  ['level-gauge', ['gauge glass'], hasGauge],
  ['pump', ['circulating pump'], hasPump],
];

/** Edges of a gas train have the names that its file gives them. */
const OF_THE_TRAIN: ReadonlySet<string> = new Set([
  'cock',
  'strainer',
  'regulator',
  'upstream-valve',
  'downstream-valve',
  'vent-valve',
  'pilot-valve',
  'pilot-regulator',
  'fuel-valve',
]);

const kept = new WeakMap<QuizPlant, ReadonlyMap<string, string>>();

/** Id of the item of the schematic; null where the cause lies at none, or at several. */
export function spotOf(plant: QuizPlant, fault: string): string | null {
  return spotsOf(plant).get(fault) ?? null;
}

/** Faults that lie at one thing of the drawing, in the order of the atlas. */
export function faultsAtSpots(plant: QuizPlant): readonly string[] {
  return [...spotsOf(plant).keys()];
}

function spotsOf(plant: QuizPlant): ReadonlyMap<string, string> {
  const known = kept.get(plant);
  if (known !== undefined) return known;
  const made = new Map(
    plant.atlas.causes.flatMap(({ fault }) => {
      const spot = fault === null ? null : findSpot(plant, fault);
      return fault === null || spot === null ? [] : [[fault, spot] as const];
    }),
  );
  kept.set(plant, made);
  return made;
}

function findSpot(plant: QuizPlant, fault: string): string | null {
  const file = plant.sound.plant;
  const parts = mendedAt(plant, fault);
  const here = SPOTS.filter(([spot, , drawn]) => drawn(file) && isThere(file, spot));
  const spots = new Set(
    parts.map((part) => here.find(([, ofSpot]) => ofSpot.includes(part))?.[0] ?? ''),
  );
  const [only = ''] = spots;
  const isOfCable = componentOf(plant, fault).endsWith('cable');
  return spots.size === 1 && only !== '' && !isOfCable ? only : null;
}

function isThere({ gasTrain }: PlantFile, spot: string): boolean {
  return !OF_THE_TRAIN.has(spot) || gasTrain.edges.some(({ id }) => id === spot);
}
