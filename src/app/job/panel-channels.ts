import { PANEL_CHANNELS } from '../../bench/index.ts';
import type { Facts } from '../session/protocol.ts';

export function isOnPanel(id: string): boolean {
  return PANEL_CHANNELS.includes(id);
}

/** Keeps each channel's place, so that frames still fit; what is not on the panel has no name. */
export function panelChannels(channels: Facts['channels']): Facts['channels'] {
  return channels.map((channel, place) =>
    isOnPanel(channel.id)
      ? channel
      : { id: `unseen.${place}`, unit: '1', kind: 'word', part: 'hidden' },
  );
}
