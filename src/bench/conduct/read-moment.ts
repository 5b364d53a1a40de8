import { COMMANDS, type CommandName, STEPS, type StepName } from '../../../machines/index.ts';
import type { Bench, Run } from '../../engine/index.ts';
import type { Moment } from './trace-types.ts';

const FLAME_SEEN = 0.02;

/** Where in a frame the quantities stand that judging needs. */
export interface Reader {
  readonly step: number;
  readonly commands: number;
  readonly fan: number;
  readonly pilot: number;
  readonly main: number;
  readonly combustible: number;
  /** Gas nodes and the places of their pressures. */
  readonly gas: readonly (readonly [node: string, place: number])[];
  readonly gasPlace: ReadonlyMap<string, number>;
}

export function readerOf({ channels, setup }: Run): Reader {
  const place = (id: string) => channels.findIndex((channel) => channel.id === id);
  const gas = setup.plant.gasTrain.nodes.map(
    ({ id }) => [id, place(`gas.${id}.pressure`)] as const,
  );
  return {
    step: place('logic.step'),
    commands: place('logic.commands'),
    fan: place('fan.speed'),
    pilot: place('pilot.intensity'),
    main: place('main.intensity'),
    combustible: place('furnace.combustible'),
    gas,
    gasPlace: new Map(gas),
  };
}

export function read(frame: Float64Array, place: number): number {
  return frame[place] ?? 0;
}

/** How the plant stands now, by its newest frame; `bench` where hands have gone on since. */
export function momentOf(run: Run, reader: Reader, bench: Bench = run.bench()): Moment {
  const frame = run.frame(run.frameCount() - 1);
  return {
    t: run.timeS(),
    step: STEPS[read(frame, reader.step)] as StepName,
    lockout: run.status().lockout,
    firing: isFiring(read(frame, reader.commands)),
    flame: Math.max(read(frame, reader.pilot), read(frame, reader.main)) > FLAME_SEEN,
    fanRpm: Math.abs(read(frame, reader.fan)),
    combustible: read(frame, reader.combustible),
    smell: run.smell(),
    gasPa: Object.fromEntries(reader.gas.map(([node, place]) => [node, read(frame, place)])),
    bench,
  };
}

/** Fuel let to the burner. The upstream valve alone, or the downstream valve alone, proves valves. */
export function isFiring(commands: number): boolean {
  return (
    has(commands, 'pilotValve') ||
    (has(commands, 'upstreamValve') && has(commands, 'downstreamValve'))
  );
}

function has(commands: number, command: CommandName): boolean {
  return ((commands >> COMMANDS.indexOf(command)) & 1) === 1;
}
