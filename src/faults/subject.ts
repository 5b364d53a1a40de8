import type {
  ClosedProofParameters,
  ControlParameters,
  DriveParameters,
  FieldDevices,
  FlameSensorParameters,
  PressureSwitchParameters,
  RelayParameters,
  ServoParameters,
  TemperatureSwitchParameters,
  TransmitterParameters,
  VariableSpeedParameters,
  WaterCutOffParameters,
  WiringParameters,
} from '../field/index.ts';
import type { AirPathParameters, AmbientParameters } from '../plant/air/index.ts';
import type { FlameParameters, IgnitionParameters } from '../plant/flame/index.ts';
import type { FurnaceParameters } from '../plant/furnace/index.ts';
import type { GasEdgeParameters, GasTrainParameters } from '../plant/gas/index.ts';
import type { SteamParameters, VesselParameters } from '../plant/vessel/index.ts';

/** Every parameter of a plant that a fault may change: the plant and the field, nothing else. */
export interface FaultSubject {
  readonly ambient: AmbientParameters;
  readonly gasTrain: GasTrainParameters;
  readonly airPath: AirPathParameters;
  readonly furnace: FurnaceParameters;
  readonly ignition: IgnitionParameters;
  readonly flame: FlameParameters;
  readonly vessel: VesselParameters;
  readonly field: FieldDevices;
  readonly wiring: WiringParameters;
  readonly control: ControlParameters;
}

type EdgeOf<K extends GasEdgeParameters['kind']> = Extract<GasEdgeParameters, { kind: K }>;

/** The first edge of a kind, optionally by name; undefined where the plant has none. */
export function edgeOf<K extends GasEdgeParameters['kind']>(
  subject: FaultSubject,
  kind: K,
  id?: string,
): EdgeOf<K> | undefined {
  return subject.gasTrain.edges.find(
    (edge): edge is EdgeOf<K> => edge.kind === kind && (id === undefined || edge.id === id),
  );
}

/** The first regulator of the main gas. */
export function regulatorOf(subject: FaultSubject): EdgeOf<'regulator'> | undefined {
  const pilot = pilotRegulatorOf(subject);
  return subject.gasTrain.edges.find(
    (edge): edge is EdgeOf<'regulator'> => edge.kind === 'regulator' && edge !== pilot,
  );
}

export function relayOf(
  subject: FaultSubject,
  terminal: RelayParameters['terminal'],
): RelayParameters | undefined {
  return subject.field.relays.find((relay) => relay.terminal === terminal);
}

export function servoOf(
  subject: FaultSubject,
  moves: 'damper' | 'fuel valve',
): ServoParameters | undefined {
  return subject.field.servos.find((servo) => servo.moves.includes(moves));
}

export function switchOf(
  subject: FaultSubject,
  feeds: PressureSwitchParameters['feeds'],
): PressureSwitchParameters | undefined {
  return subject.field.switches.find((s) => s.feeds === feeds);
}

export function driveOf(subject: FaultSubject): DriveParameters | undefined {
  return subject.field.drives[0];
}

export function sensorOf<K extends FlameSensorParameters['kind']>(
  subject: FaultSubject,
  kind: K,
): Extract<FlameSensorParameters, { kind: K }> | undefined {
  return subject.field.flameSensors.find(
    (sensor): sensor is Extract<FlameSensorParameters, { kind: K }> => sensor.kind === kind,
  );
}

export function closedProofOf(
  subject: FaultSubject,
  valve: ClosedProofParameters['valve'],
): ClosedProofParameters | undefined {
  return subject.field.closedProofs.find((proof) => proof.valve === valve);
}

export function cutOffOf(
  subject: FaultSubject,
  stands: WaterCutOffParameters['stands'],
): WaterCutOffParameters | undefined {
  return subject.field.waterCutOffs.find((cutOff) => cutOff.stands === stands);
}

/** The nozzles of the main burner: holes into the furnace that are not the pilot's. */
export function mainNozzlesOf(subject: FaultSubject): EdgeOf<'orifice'>[] {
  const pilot = pilotOrificeOf(subject);
  return subject.gasTrain.edges.filter(
    (edge): edge is EdgeOf<'orifice'> =>
      edge.kind === 'orifice' && edge.to === 'furnace' && edge !== pilot,
  );
}

export function pilotOrificeOf(subject: FaultSubject): EdgeOf<'orifice'> | undefined {
  return behindPilotValve(subject).find(
    (edge): edge is EdgeOf<'orifice'> => edge.kind === 'orifice' && edge.to === 'furnace',
  );
}

export function pilotRegulatorOf(subject: FaultSubject): EdgeOf<'regulator'> | undefined {
  return behindPilotValve(subject).find(
    (edge): edge is EdgeOf<'regulator'> => edge.kind === 'regulator',
  );
}

/** What the gas of the pilot goes through after its valve, in the direction of flow. */
function behindPilotValve(subject: FaultSubject): GasEdgeParameters[] {
  const { edges } = subject.gasTrain;
  const found: GasEdgeParameters[] = [];
  let reached = edgeOf(subject, 'shutoff', 'pilot-valve')?.to;
  while (reached !== undefined) {
    const at = reached;
    const next = edges.find((edge) => edge.from === at && !found.includes(edge));
    if (next !== undefined) found.push(next);
    reached = next?.to;
  }
  return found;
}

export function transmitterOf(
  subject: FaultSubject,
  senses: TransmitterParameters['senses'],
): TransmitterParameters | undefined {
  return subject.field.transmitters.find((one) => one.senses === senses);
}

export function variableDriveOf(subject: FaultSubject): VariableSpeedParameters | undefined {
  return subject.field.drives.find(
    (drive): drive is VariableSpeedParameters => drive.kind === 'variable speed',
  );
}

export function steamVesselOf(subject: FaultSubject): SteamParameters | undefined {
  return subject.vessel.kind === 'hot water' ? undefined : subject.vessel;
}

/** Turns the dial of a switch, which moves both its points. */
export function turnPoints(one: PressureSwitchParameters, byPa: number): void {
  one.makePa += byPa;
  one.breakPa += byPa;
}

/** The switch of an input on a temperature, in a plant that has one there. */
export function temperatureSwitchOf(
  subject: FaultSubject,
  feeds: TemperatureSwitchParameters['feeds'],
): TemperatureSwitchParameters | undefined {
  return subject.field.temperatureSwitches.find((s) => s.feeds === feeds);
}
