import { isMessage, say } from '../i18n/index.ts';

/** A channel's name in the reader's words. */
export function channelName(id: string): string {
  const code = `app.channel.${id}`;
  if (isMessage(code)) return say(code);
  const [medium, place = '', what = ''] = id.split('.');
  const gas = `app.list.${what}-at`;
  return medium === 'gas' && isMessage(gas) ? say(gas, { place: place.replace(/-/g, ' ') }) : id;
}
