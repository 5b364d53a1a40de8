import type { ControlParameters, FieldDevices } from './sections.ts';
import type { WiringParameters } from './wiring/index.ts';

/** What a plant file says of its field, defaults filled in. */
export interface FieldParameters {
  readonly field: FieldDevices;
  readonly wiring: WiringParameters;
  readonly control: ControlParameters;
}
