import { useEffect } from 'react';
import type { SPEEDS } from '../session/protocol.ts';
import type { Session } from '../session/session-types.ts';
import { settings } from '../settings/settings.ts';

/** Single keys, for hands on a keyboard; they can be switched off (WCAG 2.1.4). */
export const SHORTCUTS = [
  { key: 'p', code: 'app.help.pause' },
  { key: '1 2 3 4', code: 'app.help.speeds' },
  { key: 'n', code: 'app.help.next-step' },
  { key: ', .', code: 'app.help.second' },
  { key: 'l', code: 'app.help.live' },
  { key: 'f', code: 'app.help.faults' },
  { key: 'm', code: 'app.help.mute' },
  { key: 'u', code: 'app.help.units' },
  { key: '?', code: 'app.help.help' },
] as const;

const SPEED_KEYS: Readonly<Record<string, (typeof SPEEDS)[number]>> = {
  '1': 1,
  '2': 2,
  '3': 5,
  '4': 20,
};

interface Ways {
  readonly onHelp: () => void;
  readonly onFaults: () => void;
}

export function useShortcuts(session: Session | null, ways: Ways): void {
  useEffect(() => {
    if (session === null) return;
    const listen = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey || !settings.read().shortcuts) return;
      if (isTyping(event.target)) return;
      if (answer(event.key, session, ways)) event.preventDefault();
    };
    addEventListener('keydown', listen);
    return () => removeEventListener('keydown', listen);
  }, [session, ways]);
}

function answer(key: string, session: Session, ways: Ways): boolean {
  const speed = SPEED_KEYS[key];
  const { status, shownS } = session.store.read();
  if (speed !== undefined) session.play(speed);
  else if (key === 'p') status?.mode === 'paused' ? session.play() : session.pause();
  else if (key === 'n') session.nextStep();
  else if (key === ',' || key === '.') {
    session.scrub(shownS + (key === ',' ? -1 : 1));
    session.settle();
  } else if (key === 'l') session.backToLive();
  else if (key === 'f') ways.onFaults();
  else if (key === 'm') settings.write({ sound: !settings.read().sound });
  else if (key === 'u') settings.write({ units: settings.read().units === 'SI' ? 'US' : 'SI' });
  else if (key === '?') ways.onHelp();
  else return false;
  return true;
}

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  return target.closest('input:not([type="range"]), select, textarea, dialog') !== null;
}
