/**
 * What the field does to the plant, fresh every step: valves, spark, fan speed, blades. What its
 * instruments show (targets, feedbacks, frequency, current, firing rate, flame signal, count) is
 * fresh ten times a second.
 */
export interface FieldOutputs {
  upstreamValve: boolean;
  downstreamValve: boolean;
  ventValve: boolean;
  pilotValve: boolean;
  alarm: boolean;
  /** Into the electrode. */
  sparkW: number;
  /** Shaft of the fan, never negative; which way it turns is `fanBackward`. */
  fanRpm: number;
  fanBackward: boolean;
  fanTargetRpm: number;
  fanFeedbackRpm: number;
  fanFrequencyHz: number;
  fanCurrentA: number;
  damperTargetDeg: number;
  damperFeedbackDeg: number;
  damperShaftDeg: number;
  damperBladeDeg: number;
  fuelValveTargetDeg: number;
  fuelValveFeedbackDeg: number;
  fuelValveBladeDeg: number;
  firingRate: number;
  flameMicroamps: number;
  airChanges: number;
  /** Asked of the feed valve, 0…1. */
  feedDemand: number;
  /** The motor of the feed pump, or of the circulating pump of hot water, has volts. */
  feedPump: boolean;
  /** What the level probe shows. */
  levelM: number;
  /** What the vessel's pressure transmitter shows. */
  vesselPa: number;
  /** What the thermometer in the water shows, °C. */
  waterC: number;
}

export function createOutputs(): FieldOutputs {
  return {
    upstreamValve: false,
    downstreamValve: false,
    ventValve: false,
    pilotValve: false,
    alarm: false,
    sparkW: 0,
    fanRpm: 0,
    fanBackward: false,
    fanTargetRpm: 0,
    fanFeedbackRpm: 0,
    fanFrequencyHz: 0,
    fanCurrentA: 0,
    damperTargetDeg: 0,
    damperFeedbackDeg: 0,
    damperShaftDeg: 0,
    damperBladeDeg: 0,
    fuelValveTargetDeg: 0,
    fuelValveFeedbackDeg: 0,
    fuelValveBladeDeg: 0,
    firingRate: 0,
    flameMicroamps: 0,
    airChanges: 0,
    feedDemand: 0,
    feedPump: false,
    levelM: 0,
    vesselPa: 0,
    waterC: 0,
  };
}
