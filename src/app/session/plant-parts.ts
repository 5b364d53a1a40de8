import type { PlantFile } from '../../engine/index.ts';

/**
 * What a plant has, of the channels and terminals that the engine keeps for every plant alike.
 * The page shows nothing of the others.
 */
export interface PlantParts {
  hasChannel(id: string): boolean;
  hasInput(input: string): boolean;
  /** A limit that stays open until someone resets it by hand. */
  readonly hasLimitReset: boolean;
}

const OF_A_DRIVE = new Set(['fan.target', 'fan.feedback', 'fan.frequency']);
const OF_A_PILOT = new Set(['pilot.intensity']);
const OF_A_SECOND_SERVO = new Set(['fuel-valve.target', 'fuel-valve.feedback']);

const OF_SPEED = new Set(['fanAtPurgeSpeed', 'fanAtLightOffSpeed', 'speedOnCurve']);
const OF_VALVE_PROVING = new Set(['interspaceEmpty', 'interspaceFull']);
const OF_CLOSURE = new Set(['upstreamValveClosed', 'downstreamValveClosed']);
const OF_WATER_LEVEL = new Set(['waterAboveFirst', 'waterAboveSecond']);

export function partsOf(plant: PlantFile): PlantParts {
  const { variant, field, vessel } = plant;
  const isHotWater = vessel.kind === 'hot water';
  const feeds = new Set<string>(
    [...field.switches, ...field.temperatureSwitches].map(({ feeds: input }) => input),
  );
  const hasDrive = variant.fan === 'variable speed';
  const hasOneServo = field.servos.some(({ moves }) => moves === 'damper and fuel valve');
  return {
    hasChannel: (id) =>
      !(OF_A_DRIVE.has(id) && !hasDrive) &&
      !(OF_A_PILOT.has(id) && variant.ignition === 'direct spark') &&
      !(OF_A_SECOND_SERVO.has(id) && hasOneServo),
    hasInput: (input) =>
      !(OF_SPEED.has(input) && !hasDrive) &&
      !(OF_VALVE_PROVING.has(input) && variant.valveProving === 'none') &&
      !(OF_CLOSURE.has(input) && !variant.proofOfClosure) &&
      !(OF_WATER_LEVEL.has(input) && field.waterCutOffs.length === 0) &&
      !(input === 'furnacePressureInBand' && !feeds.has(input)) &&
      !(input === 'warmUpSatisfied' && isHotWater && !feeds.has(input)),
    hasLimitReset: [...field.switches, ...field.waterCutOffs, ...field.temperatureSwitches].some(
      (device) => device.manualReset === true,
    ),
  };
}
