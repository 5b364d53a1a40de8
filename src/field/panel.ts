export type FiringMode = 'automatic' | 'hand' | 'low fire';

/** What a person sets at the panel and at the limits; the engine writes it. */
export interface Panel {
  callForHeat: boolean;
  resetPressed: boolean;
  /** The reset on the devices that latch: high limit, second water cut-off. */
  limitResetPressed: boolean;
  emergencyStopPressed: boolean;
  supplyOn: boolean;
  firingMode: FiringMode;
  handRate: number;
  secondSetpoint: boolean;
  /** What is outside allows the burner, where the plant has such a contact. */
  remoteEnable: boolean;
  /** A contact from outside asks for the second setpoint, where the plant has one. */
  remoteSetback: boolean;
}

/** Isolator on, burner switch off, automatic. */
export function createPanel(): Panel {
  return {
    callForHeat: false,
    resetPressed: false,
    limitResetPressed: false,
    emergencyStopPressed: false,
    supplyOn: true,
    firingMode: 'automatic',
    handRate: 0,
    secondSetpoint: false,
    remoteEnable: true,
    remoteSetback: false,
  };
}
