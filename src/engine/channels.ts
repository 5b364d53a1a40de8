/** What the recorder keeps, in order; a frame is one number for each. */
import { type Field, readWiringWords } from '../field/index.ts';
import type { GasTrain } from '../plant/gas/index.ts';
import type { QuantityKind, Unit } from '../quantity/index.ts';
import { instrumentChannels, writeInstruments } from './instrument-channels.ts';
import type { PlantState } from './plant-state.ts';
import { vesselChannels, writeVessel } from './vessel-channels.ts';

/** `visible`: an instrument or an eye could take it; `hidden`: only the simulator knows. */
export interface ChannelInfo {
  readonly id: string;
  readonly unit: Unit;
  readonly kind: QuantityKind;
  readonly part: 'visible' | 'hidden';
}

const MOVING_KINDS = new Set(['cock', 'regulator', 'shutoff', 'control']);

function channel(
  id: string,
  unit: Unit,
  kind: QuantityKind,
  part: ChannelInfo['part'] = 'visible',
): ChannelInfo {
  return { id, unit, kind, part };
}

const AFTER_GAS: readonly ChannelInfo[] = [
  channel('air.flow', 'kg/s', 'air flow'),
  channel('air.windbox.pressure', 'Pa', 'air pressure'),
  channel('air.head.differential', 'Pa', 'air pressure'),
  channel('furnace.pressure', 'Pa', 'air pressure'),
  channel('stack.draught', 'Pa', 'air pressure'),
  channel('fan.speed', 'rpm', 'shaft speed'),
  channel('fan.target', 'rpm', 'shaft speed'),
  channel('fan.feedback', 'rpm', 'shaft speed'),
  channel('fan.frequency', 'Hz', 'frequency'),
  channel('fan.current', 'A', 'current'),
  channel('fan.belt-slip', '1', 'share'),
  channel('damper.target', '°', 'angle'),
  channel('damper.feedback', '°', 'angle'),
  channel('damper.shaft', '°', 'angle'),
  channel('damper.blade', '°', 'angle'),
  channel('fuel-valve.target', '°', 'angle'),
  channel('fuel-valve.feedback', '°', 'angle'),
  channel('fuel-valve.blade', '°', 'angle'),
  channel('gas.leak', 'kg/s', 'gas flow', 'hidden'),
  channel('furnace.combustible', '1', 'share', 'hidden'),
  channel('furnace.held-puff', '1', 'number', 'hidden'),
  channel('furnace.air-changes', '1', 'number'),
  channel('furnace.temperature', 'K', 'temperature'),
  channel('flue.temperature', 'K', 'temperature'),
  channel('flue.oxygen', '1', 'share', 'hidden'),
  channel('flue.carbon-dioxide', '1', 'share', 'hidden'),
  channel('flue.carbon-monoxide', '1', 'trace gas', 'hidden'),
  channel('flue.nitric-oxide', '1', 'trace gas', 'hidden'),
  channel('analyser.oxygen', '1', 'gas share'),
  channel('analyser.carbon-dioxide', '1', 'gas share'),
  channel('analyser.carbon-monoxide', '1', 'trace gas'),
  channel('analyser.nitric-oxide', '1', 'trace gas'),
  channel('analyser.temperature', 'K', 'temperature'),
  channel('efficiency.net', '1', 'gas share'),
  channel('efficiency.gross', '1', 'gas share'),
  channel('spark.power', 'W', 'power'),
  channel('pilot.intensity', '1', 'share'),
  channel('main.intensity', '1', 'share'),
  channel('main.lift', '1', 'share'),
  channel('flame.signal', 'µA', 'flame current'),
  channel('puff.index', '1', 'number', 'hidden'),
];

const AFTER_VESSEL: readonly ChannelInfo[] = [
  channel('vessel.load', '1', 'share'),
  channel('firing.rate', '1', 'share'),
  channel('logic.inputs', '1', 'word'),
  channel('logic.commands', '1', 'word'),
  channel('logic.step', '1', 'word'),
  channel('logic.target', '1', 'word'),
];

export function channelsOf(plant: PlantState, field: Field): readonly ChannelInfo[] {
  const { gas } = plant;
  const { edges } = plant.parameters.gasTrain;
  return [
    ...gas.nodeIds.map((id) => channel(`gas.${id}.pressure`, 'Pa', 'gas pressure')),
    ...edges.map(({ id }) => channel(`gas.${id}.flow`, 'kg/s', 'gas flow')),
    ...movingEdges(plant).map(({ id }) => channel(`gas.${id}.opening`, '1', 'share')),
    ...AFTER_GAS,
    ...vesselChannels(plant.parameters.vessel.kind).map(([id, unit, kind]) =>
      channel(id, unit, kind),
    ),
    ...instrumentChannels(plant.parameters.vessel.kind).map(([id, unit, kind]) =>
      channel(id, unit, kind),
    ),
    ...AFTER_VESSEL,
    ...wiringChannels(field),
  ];
}

/** What has volts and what conducts, thirty to a word, in the order of `describeWiring`. */
function wiringChannels({ wiring }: Field): ChannelInfo[] {
  const words = (name: string, count: number) =>
    Array.from({ length: count }, (_, k) => channel(`wiring.${name}.${k}`, '1', 'word'));
  return [...words('live', wiring.liveWords.length), ...words('made', wiring.madeWords.length)];
}

/** Places of the edges whose opening is recorded. */
export function movingPlaces(plant: PlantState): Int32Array {
  const { edges } = plant.parameters.gasTrain;
  return Int32Array.from(edges.flatMap((e, i) => (MOVING_KINDS.has(e.kind) ? [i] : [])));
}

function movingEdges(plant: PlantState) {
  return plant.parameters.gasTrain.edges.filter((e) => MOVING_KINDS.has(e.kind));
}

/** All that escapes into the room at joints. */
function leakOf({ flowKgS, edgeCount, liveCount }: GasTrain): number {
  let sum = 0;
  for (let i = edgeCount; i < liveCount; i++) sum += flowKgS[i] as number;
  return sum;
}

export interface LogicWords {
  inputs: number;
  commands: number;
  step: number;
  target: number;
}

/** Writes the frame of this moment into `frames` from `at`; the order is that of `channelsOf`. */
export function writeFrame(
  frames: Float64Array,
  at: number,
  plant: PlantState,
  field: Field,
  logic: LogicWords,
  moving: Int32Array,
): void {
  const { gas, air, furnace, flame, vessel } = plant;
  const { analyser } = furnace;
  const { outputs } = field;
  let k = at;
  for (let i = 0; i < gas.pressureGaugePa.length; i++) {
    frames[k++] = gas.pressureGaugePa[i] as number;
  }
  const edges = plant.parameters.gasTrain.edges.length;
  for (let i = 0; i < edges; i++) frames[k++] = gas.flowKgS[i] as number;
  for (let i = 0; i < moving.length; i++) frames[k++] = gas.stem[moving[i] as number] as number;
  frames[k++] = air.airFlowKgS;
  frames[k++] = air.windboxGaugePa;
  frames[k++] = air.headDifferentialPa;
  frames[k++] = air.furnaceGaugePa;
  frames[k++] = air.draughtPa;
  frames[k++] = outputs.fanBackward ? -outputs.fanRpm : outputs.fanRpm;
  frames[k++] = outputs.fanTargetRpm;
  frames[k++] = outputs.fanFeedbackRpm;
  frames[k++] = outputs.fanFrequencyHz;
  frames[k++] = outputs.fanCurrentA;
  frames[k++] = field.drive === null ? 0 : field.drive.parameters.beltSlip;
  frames[k++] = outputs.damperTargetDeg;
  frames[k++] = outputs.damperFeedbackDeg;
  frames[k++] = outputs.damperShaftDeg;
  frames[k++] = outputs.damperBladeDeg;
  frames[k++] = outputs.fuelValveTargetDeg;
  frames[k++] = outputs.fuelValveFeedbackDeg;
  frames[k++] =
    plant.places.control < 0
      ? outputs.fuelValveBladeDeg
      : (gas.bladeDeg[plant.places.control] as number);
  frames[k++] = leakOf(gas);
  frames[k++] = furnace.combustible;
  frames[k++] = furnace.heldPuffIndex;
  frames[k++] = outputs.airChanges;
  frames[k++] = furnace.gasTemperatureK;
  frames[k++] = furnace.flueTemperatureK;
  frames[k++] = furnace.flueOxygen;
  frames[k++] = furnace.flueCarbonDioxide;
  frames[k++] = furnace.flueCarbonMonoxide;
  frames[k++] = furnace.flueNitricOxide;
  frames[k++] = analyser.oxygen;
  frames[k++] = analyser.carbonDioxide;
  frames[k++] = analyser.carbonMonoxide;
  frames[k++] = analyser.nitricOxide;
  frames[k++] = analyser.temperatureK;
  frames[k++] = analyser.efficiencyNet;
  frames[k++] = analyser.efficiencyGross;
  frames[k++] = flame.sparkW;
  frames[k++] = flame.pilotIntensity;
  frames[k++] = flame.mainIntensity;
  frames[k++] = flame.mainLift;
  frames[k++] = outputs.flameMicroamps;
  frames[k++] = furnace.puffPeakIndex;
  k = writeVessel(frames, k, vessel);
  k = writeInstruments(frames, k, vessel.parameters.kind, outputs);
  frames[k++] = plant.load;
  frames[k++] = outputs.firingRate;
  frames[k++] = logic.inputs;
  frames[k++] = logic.commands;
  frames[k++] = logic.step;
  frames[k++] = logic.target;
  const { wiring } = field;
  readWiringWords(wiring);
  const { liveWords, madeWords } = wiring;
  for (let i = 0; i < liveWords.length; i++) frames[k++] = liveWords[i] as number;
  for (let i = 0; i < madeWords.length; i++) frames[k++] = madeWords[i] as number;
}
