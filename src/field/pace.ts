import type { PressureSwitchParameters } from './pressure-switch.ts';
import type { TransmitterParameters } from './transmitter.ts';

/**
 * Which devices need every step: those whose moment a start waits for. Gas and furnace limits and
 * everything on the vessel change slowly against a tenth of a second.
 */
export function isSlowSwitch(p: PressureSwitchParameters): boolean {
  return p.feeds !== 'airProved';
}

export function isSlowTransmitter(p: TransmitterParameters): boolean {
  return p.senses !== 'interspace';
}
