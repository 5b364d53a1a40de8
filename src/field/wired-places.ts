import { elementPlace, type Wiring } from './wiring/index.ts';

/** Where the devices of a field stand in its wiring; −1 where they have no place. */
export interface WiredPlaces {
  readonly monitor: number;
  readonly controller: number;
  readonly relayCoils: Int32Array;
  readonly servoMotors: Int32Array;
  readonly servoEnds: Int32Array;
  readonly contactors: Int32Array;
  readonly transformers: Int32Array;
  readonly upstreamValve: number;
  readonly downstreamValve: number;
  readonly ventValve: number;
  readonly pilotValve: number;
  readonly alarmLamp: number;
  readonly feedPump: number;
  readonly secondSetpoint: number;
}

export function findPlaces(wiring: Wiring): WiredPlaces {
  const { field } = wiring.parameters;
  const at = (name: string) => elementPlace(wiring, name);
  const each = (devices: readonly { readonly id: string }[], nameOf: (id: string) => string) =>
    Int32Array.from(devices, ({ id }) => at(nameOf(id)));
  return {
    monitor: at('in.supplyInBand'),
    controller: at('controller'),
    relayCoils: each(field.relays, (id) => `${id}.coil`),
    servoMotors: each(field.servos, (id) => `${id}.motor`),
    servoEnds: each(field.servos, (id) => `in.${id}`),
    contactors: each(field.drives, (id) => `${id}.contactor`),
    transformers: each(field.ignitionTransformers, (id) => id),
    upstreamValve: at('upstream-valve'),
    downstreamValve: at('downstream-valve'),
    ventValve: at('vent-valve'),
    pilotValve: at('pilot-valve'),
    alarmLamp: at('alarm-lamp'),
    feedPump: at('feed-pump'),
    secondSetpoint: at('in.secondSetpoint'),
  };
}
