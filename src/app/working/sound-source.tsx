import { useEffect, useState } from 'react';
import type { Heard } from '../../engine/index.ts';
import { createSound } from '../../view/index.ts';
import { createStore, useStorePart } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { useFacts, useSession } from './session-context.tsx';
import { viewMessage, vocabularyOf } from './view-words.ts';

const listened = createStore<{ readonly heard: readonly Heard[] }>({ heard: [] });

/** Someone listened: squeal, hunting and hiss are sounded for a moment; the words are theirs to say. */
export function letHear(heard: readonly Heard[]): void {
  listened.write({ heard });
}

/** How long a caption stands. */
const CAPTION_MS = 2600;

/** The plant as it is heard, and in words what is heard. */
export function SoundSource() {
  const session = useSession();
  const facts = useFacts();
  const on = useStorePart(settings, (value) => value.sound);
  const [caption, setCaption] = useState('');
  const [sound, setSound] = useState<ReturnType<typeof createSound> | null>(null);
  useEffect(() => {
    const made = createSound({
      channels: facts.channels,
      vocabulary: vocabularyOf(facts),
      message: viewMessage,
      muted: !settings.read().sound,
      onCaption: ({ text }) => setCaption(text),
    });
    const stop = session.onMoment(({ next, tS, running }) => {
      if (running) made.showFrame(next, tS);
    });
    setSound(made);
    return () => {
      stop();
      made.destroy();
    };
  }, [session, facts]);
  useEffect(() => sound?.setMuted(!on), [sound, on]);
  useEffect(() => {
    if (sound === null) return;
    return listened.subscribe(() => sound.setHeard(listened.read().heard));
  }, [sound]);
  useEffect(() => {
    if (sound === null || !on) return;
    return afterFirstGesture(() => void sound.unlock());
  }, [sound, on]);
  useEffect(() => {
    if (caption === '') return;
    const timer = setTimeout(() => setCaption(''), CAPTION_MS);
    return () => clearTimeout(timer);
  }, [caption]);
  return caption === '' ? null : <p className="caption">♪ {caption}</p>;
}

/** A browser lets no page sound before it was touched; most come here by a press already. */
function afterFirstGesture(act: () => void): () => void {
  if (navigator.userActivation?.hasBeenActive) {
    act();
    return () => undefined;
  }
  const once = (): void => {
    stop();
    act();
  };
  const stop = (): void => {
    removeEventListener('pointerdown', once);
    removeEventListener('keydown', once);
  };
  addEventListener('pointerdown', once);
  addEventListener('keydown', once);
  return stop;
}
