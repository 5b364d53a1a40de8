import {
  choice,
  flag,
  name,
  number,
  type ParameterTable,
  type Values,
} from '../../quantity/index.ts';

/** What feeds the wires. An alternating source has the volts and the frequency of the mains. */
export const sourceParameters = {
  id: name('name of the source'),
  kind: choice(['alternating', 'direct'], 'mains of the control circuit, or a direct supply'),
  volts: number('V', 0, 60, 'volts of a direct supply', 24),
  live: name('wire at its live end'),
  neutral: name('wire at its other end'),
  seriesOhm: number('Ω', 0.001, 1000, 'resistance of the source and of the wires up to it', 0.4),
  bonded: flag('the other end is tied to earth at the source', true),
} as const satisfies ParameterTable;
export type SourceParameters = Values<typeof sourceParameters>;

export const fuseParameters = {
  id: name('name of the fuse'),
  ratedA: number('A', 0.05, 63, 'current it carries for ever'),
  condition: choice(['sound', 'blown'], 'condition of the fuse', 'sound'),
} as const satisfies ParameterTable;
export type FuseParameters = Values<typeof fuseParameters>;

/** A contact that no device of the field moves: remote enable, door switch, a link. */
export const siteContactParameters = {
  id: name('name of the contact'),
  made: flag('whether it is closed', true),
} as const satisfies ParameterTable;
export type SiteContactParameters = Values<typeof siteContactParameters>;

export const loadParameters = {
  id: name('name of what takes the power'),
  kind: choice(['coil', 'lamp', 'motor', 'transformer', 'electronics'], 'what it is', 'coil'),
  ratedW: number('W', 0.5, 2000, 'power at nominal volts'),
  pullInShare: number('1', 0.05, 1, 'share of nominal volts at which it works', 0.75),
  dropOutShare: number('1', 0.02, 1, 'share of nominal volts below which it lets go', 0.35),
  condition: choice(['sound', 'open', 'shorted'], 'condition of its winding', 'sound'),
} as const satisfies ParameterTable;
export type LoadParameters = Values<typeof loadParameters>;

/** The controller's digital inputs: a resistance that reads made or not by its volts. */
export const controllerInputParameters = {
  inputOhm: number('Ω', 500, 1e6, 'resistance of a digital input', 15000),
  makeShare: number('1', 0.1, 1, 'share of nominal volts at which an input reads made', 0.6),
  breakShare: number('1', 0.05, 1, 'share below which it no longer does', 0.35),
} as const satisfies ParameterTable;
export type ControllerInputParameters = Values<typeof controllerInputParameters>;

/**
 * Wires that run side by side. Each pair of cores, and each core and earth, has a capacitance by
 * length; it shows only to a meter on a wire that hangs on nothing else.
 */
export const cableParameters = {
  id: name('name of the cable'),
  lengthM: number('m', 0.1, 500, 'length'),
  coreToCorePfM: number('pF/m', 0, 500, 'capacitance between two cores', 60),
  coreToEarthPfM: number('pF/m', 0, 500, 'capacitance of a core to earth', 60),
} as const satisfies ParameterTable;
export type CableParameters = Values<typeof cableParameters> & { wires: string[] };

/** A bad joint at one terminal: high resistance, loose, or off (1e9 Ω and more). */
export const jointParameters = {
  ohm: number('Ω', 0, 1e13, 'resistance of the joint'),
} as const satisfies ParameterTable;
export interface JointParameters {
  terminal: string;
  ohm: number;
}

/** Something that joins two wires, or a wire and earth, that should not be joined. */
export const bridgeParameters = {
  ohm: number('Ω', 0.001, 1e13, 'resistance of the bridge'),
} as const satisfies ParameterTable;
export interface BridgeParameters {
  from: string;
  to: string;
  ohm: number;
}

/** Two wires that have changed places at their terminals. */
export interface SwapParameters {
  one: string;
  other: string;
}

/** `wiring:` of a plant file, defaults filled in. */
export interface WiringParameters {
  readonly sources: SourceParameters[];
  readonly fuses: FuseParameters[];
  readonly contacts: SiteContactParameters[];
  readonly loads: LoadParameters[];
  readonly controller: ControllerInputParameters;
  readonly cables: CableParameters[];
  /** Wire, element, wire, …, wire. */
  readonly rungs: string[][];
  readonly joints: JointParameters[];
  readonly bridges: BridgeParameters[];
  readonly swaps: SwapParameters[];
}

/** The wire that is always there. */
export const EARTH = 'earth';
