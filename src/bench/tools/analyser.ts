import type { PlantFile } from '../../engine/index.ts';
import { exactExp } from '../../numeric/index.ts';
import type { QuantityKind } from '../../quantity/index.ts';
import { displayed, OVER } from './digits.ts';
import { createFollower, follow, isStill } from './follower.ts';
import { ANALYSER } from './instruments.ts';
import { isMissing, nothingShown } from './plain-reading.ts';
import type {
  Follower,
  ReadingLine,
  ToolFlag,
  ToolReading,
  ToolRun,
  ToolState,
} from './tool-types.ts';
import { rangeOf } from './tools.ts';
import { connectedS, walkFrames } from './walk-frames.ts';

const CHANNELS = [
  'analyser.oxygen',
  'analyser.carbon-dioxide',
  'analyser.carbon-monoxide',
  'analyser.nitric-oxide',
  'analyser.temperature',
  'efficiency.net',
  'efficiency.gross',
] as const;
const [OXYGEN, CARBON_DIOXIDE, MONOXIDE, NITRIC_OXIDE, TEMPERATURE, NET, GROSS] = [
  0, 1, 2, 3, 4, 5, 6,
] as const;
const ZERO_C = 273.15;
/** What may flicker in a display that has settled: a share, a trace gas, the temperature. */
const STEADY_SHARE = 0.001;
const STEADY_TRACE = 1e-5;
const STEADY_K = 1;
const STILL_FRAMES = 50;
/** Gas at 0 °C, close to air, kg/m³. */
const NORMAL_DENSITY = 1.29;

/**
 * Flue gas at the probe: oxygen first, then CO₂, CO, NO, its temperature, and the efficiency made of
 * them.
 *
 * For its first minute it draws fresh air, warms up and takes its zero; then flue gas comes through
 * hose and cells. What the cells of the one in the flue show is recorded; here is added what upkeep
 * and the probe do: a probe that does not reach the middle of the flue draws air from along the
 * wall, a full water trap washes CO and NO out, a cell for CO is shut off past its range.
 * Equation: reading = (1 − a)·x + a·x_air; stack loss follows (T − T_room)/(0.2095 − O₂), as
 *   Siegert's formula has it.
 */
export function readAnalyser(run: ToolRun, state: ToolState): ToolReading {
  const { plant } = run.setup;
  const airShare = wallAir(plant, rangeOf(state.use));
  const roomK = plant.ambient.temperatureC + ZERO_C;
  walkFrames(run, state, CHANNELS, (frame, places, k) => {
    const t = k * run.frameS - state.sinceS;
    const inFlue = (i: number) => frame[places[i] as number] as number;
    if (t > ANALYSER.zeroS && inFlue(OXYGEN) < ANALYSER.wetOxygen) state.count += 1;
    takeSample(state.followers, inFlue, { t, airShare, roomK, isWashed: isTrapFull(run, state) });
  });
  if (isMissing(state)) return nothingShown('gas share', '%', ['no signal']);

  const shown = (i: number) => state.followers[i]?.value ?? 0;
  const zeroed = connectedS(state) >= ANALYSER.zeroS;
  const still = zeroed && state.followers.every((one) => isStill(one, STILL_FRAMES));
  const flags: ToolFlag[] = [];
  if (!zeroed) flags.push('needs zero');
  if (shown(MONOXIDE) > ANALYSER.carbonMonoxideFull) flags.push('over range');
  if (airShare > 0) flags.push('probe too short');
  if (isTrapFull(run, state)) flags.push('condensate');
  if (!still) flags.push('settling');
  return {
    ...displayed(shown(OXYGEN), 'gas share', 0.001),
    flags,
    steady: still,
    ...(zeroed ? {} : { note: { code: 'bench.note.fresh-air' } }),
    lines: [
      line('oxygen', shown(OXYGEN), 'gas share', 0.001),
      line('carbon-dioxide', shown(CARBON_DIOXIDE), 'gas share', 0.001),
      traceLine('carbon-monoxide', shown(MONOXIDE), ANALYSER.carbonMonoxideFull),
      traceLine('nitric-oxide', shown(NITRIC_OXIDE), ANALYSER.nitricOxideFull),
      line('temperature', shown(TEMPERATURE), 'temperature', 1),
      efficiencyLine('efficiency-net', shown(NET)),
      efficiencyLine('efficiency-gross', shown(GROSS)),
    ],
  };
}

interface Sampling {
  /** Since it was connected, s. */
  readonly t: number;
  readonly airShare: number;
  readonly roomK: number;
  readonly isWashed: boolean;
}

/** One frame of all displays. */
function takeSample(
  displays: Follower[],
  inFlue: (channel: number) => number,
  { t, airShare, roomK, isWashed }: Sampling,
): void {
  const { airOxygen, coldOxygen, coldTrace, oxygenCellS, traceCellS, washedShare } = ANALYSER;
  while (displays.length < CHANNELS.length) displays.push(createFollower());
  const cold = exactExp(-Math.max(0, t) / ANALYSER.coldLagS);
  const kept = isWashed ? 1 - washedShare : 1;
  const trace = (i: number) => drawn(t, inFlue(i), 0, airShare, traceCellS);
  const take = (i: number, value: number, tolerance: number) =>
    follow(displays[i] as Follower, value, 1, tolerance);

  const oxygen = drawn(t, inFlue(OXYGEN), airOxygen, airShare, oxygenCellS);
  take(OXYGEN, oxygen + cold * coldOxygen, STEADY_SHARE);
  take(CARBON_DIOXIDE, trace(CARBON_DIOXIDE), STEADY_SHARE);
  take(MONOXIDE, kept * trace(MONOXIDE) + cold * coldTrace, STEADY_TRACE);
  take(NITRIC_OXIDE, kept * trace(NITRIC_OXIDE) + cold * coldTrace, STEADY_TRACE);
  const warmer = inFlue(TEMPERATURE) - roomK;
  take(TEMPERATURE, roomK + (1 - airShare) * warmer, STEADY_K);
  const burns = warmer > 1 && oxygen < ANALYSER.wetOxygen;
  const lossShare = ((1 - airShare) * (airOxygen - inFlue(OXYGEN))) / (airOxygen - oxygen);
  for (const i of [NET, GROSS]) {
    const efficiency = inFlue(i);
    const shows = burns && efficiency > 0;
    take(i, shows ? 1 - (1 - efficiency) * lossShare : 0, STEADY_SHARE);
  }
}

/**
 * Share of air in the sample of a probe: falls from the wall's to none at the middle of the flue.
 * The flue's width is what its rated gas needs at its rated temperature.
 */
export function wallAir(plant: PlantFile, probe: string): number {
  const reachM = probe === 'short' ? ANALYSER.probeM.short : ANALYSER.probeM.long;
  const { ratedFlueFlowKgS } = plant.furnace;
  const hotK = plant.airPath.stack.ratedTemperatureC + ZERO_C;
  const areaM2 = (ratedFlueFlowKgS * hotK) / (NORMAL_DENSITY * ZERO_C * ANALYSER.flueVelocityMS);
  const radiusM = Math.sqrt(areaM2 / Math.PI);
  return ANALYSER.wallAirShare * Math.max(0, 1 - reachM / radiusM);
}

/** What a cell shows that has had fresh air till the zero was taken. */
function drawn(t: number, flue: number, air: number, airShare: number, cellS: number): number {
  const gasS = t - ANALYSER.zeroS - ANALYSER.delayS;
  if (gasS <= 0) return air;
  const sample = flue + airShare * (air - flue);
  return air + (1 - exactExp(-gasS / cellS)) * (sample - air);
}

function isTrapFull(run: ToolRun, state: ToolState): boolean {
  return state.count * run.frameS > ANALYSER.trapS;
}

function line(what: string, value: number, kind: QuantityKind, resolution: number): ReadingLine {
  return { what: { code: `bench.line.${what}` }, ...displayed(value, kind, resolution) };
}

function traceLine(what: string, value: number, full: number): ReadingLine {
  const shown = line(what, value, 'trace gas', 1e-6);
  return value > full ? { ...shown, value: null, shown: OVER } : shown;
}

function efficiencyLine(what: string, value: number): ReadingLine {
  const shown = line(what, value, 'gas share', 0.001);
  return value > 0 ? shown : { ...shown, value: null, shown: '' };
}
