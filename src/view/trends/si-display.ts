import { type Display, displayOf, kindOfUnit, UNITS, type Unit } from '../../quantity/index.ts';
import type { Channel } from '../channels.ts';

const VESSEL = /^vessel\./;

/** Metric units of the trade, from the unit and the place of a channel. */
export function siDisplay(channels: readonly Channel[]): (channelId: string) => Display {
  const units = new Map(channels.map((channel) => [channel.id, channel.unit]));
  return (channelId) => {
    const unit = units.get(channelId) ?? '1';
    if (unit === 'Pa') {
      return displayOf(VESSEL.test(channelId) ? 'vessel pressure' : 'gas pressure', 'SI');
    }
    if (unit === '1') return displayOf('share', 'SI');
    return displayOf(isUnit(unit) ? kindOfUnit(unit) : 'number', 'SI');
  };
}

function isUnit(unit: string): unit is Unit {
  return (UNITS as readonly string[]).includes(unit);
}
