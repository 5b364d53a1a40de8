import type { Howl } from 'howler';
import type { Heard } from '../../engine/index.ts';
import { createSoundEar, type SoundEvent, type SoundLevels } from './sound-view.ts';
import type { Sound, SoundName, SoundOptions } from './types.ts';

type Loop = 'fan' | 'gas' | 'flame' | 'spark' | 'alarm' | Sign;
/** Sounds that tell of something wrong. */
type Sign = 'squeal' | 'hunting' | 'hiss';
const SIGNS: readonly Sign[] = ['squeal', 'hunting', 'hiss'];
const LOOPS: readonly Loop[] = ['fan', 'gas', 'flame', 'spark', 'alarm', ...SIGNS];
const ONCE: readonly SoundName[] = ['valve', 'light'];
/** Without a frame for so long the run is taken to stand still. */
const REST_MS = 350;
const VALVE_VOLUME = 0.7;
const LIGHT_VOLUME = 0.8;
const SIGN_VOLUME = 0.6;
/** What was listened to is sounded for so long. */
const LISTEN_MS = 3000;
const SIGN_OF: Readonly<Partial<Record<Heard['what'], Sign>>> = {
  'belt squeal': 'squeal',
  'regulator hunting': 'hunting',
  'gas at the vent': 'hiss',
  'gas at a joint': 'hiss',
};

/** The plant as it is heard. Nothing is fetched before `unlock`. */
export function createSound(options: SoundOptions): Sound {
  const ear = createSoundEar(options.channels, options.vocabulary);
  const urlOf =
    options.urlOf ?? ((name: SoundName) => new URL(`sounds/${name}.wav`, document.baseURI).href);
  let message = options.message;
  let muted = options.muted ?? false;
  let howls: Record<SoundName, Howl> | null = null;
  let unlocking: Promise<void> | null = null;
  let restTimer: ReturnType<typeof setTimeout> | null = null;
  let lastFrameAt = 0;
  let alive = true;
  const playing: Record<Loop, number> = {
    fan: 0,
    gas: 0,
    flame: 0,
    spark: 0,
    alarm: 0,
    squeal: 0,
    hunting: 0,
    hiss: 0,
  };
  let listened: Partial<Record<Sign, number>> = {};
  let listenTimer: ReturnType<typeof setTimeout> | null = null;
  let fanRate = 1;

  async function fetchSounds(): Promise<void> {
    const { Howl: Player } = await import('howler');
    if (!alive) return;
    const make = (name: SoundName, loop: boolean): Howl =>
      new Player({ src: [urlOf(name)], loop, volume: loop ? 0 : 1, mute: muted });
    howls = {
      fan: make('fan', true),
      gas: make('gas', true),
      flame: make('flame', true),
      spark: make('spark', true),
      alarm: make('alarm', true),
      squeal: make('squeal', true),
      hunting: make('hunting', true),
      hiss: make('hiss', true),
      valve: make('valve', false),
      light: make('light', false),
    };
  }

  function play(levels: SoundLevels): void {
    if (howls === null) return;
    for (const loop of LOOPS) {
      const heard = listened[loop as Sign] ?? 0;
      setLevel(howls[loop], loop, Math.max(heard, levels[`${loop}Volume`]));
    }
    if (levels.fanVolume > 0 && levels.fanRate !== fanRate) {
      fanRate = levels.fanRate;
      howls.fan.rate(fanRate);
    }
  }

  function setLevel(howl: Howl, loop: Loop, volume: number): void {
    if (volume === playing[loop]) return;
    if (volume > 0 && playing[loop] === 0) howl.play();
    if (volume === 0) howl.stop();
    else howl.volume(volume);
    playing[loop] = volume;
  }

  function rest(): void {
    restTimer = null;
    const waited = performance.now() - lastFrameAt;
    if (waited < REST_MS) {
      restTimer = setTimeout(rest, REST_MS - waited);
      return;
    }
    if (howls === null) return;
    for (const loop of LOOPS) setLevel(howls[loop], loop, listened[loop as Sign] ?? 0);
  }

  function stopListening(): void {
    listenTimer = null;
    listened = {};
    const isRunning = restTimer !== null;
    if (howls === null || isRunning) return;
    for (const sign of SIGNS) setLevel(howls[sign], sign, 0);
  }

  function happen(event: SoundEvent): void {
    const once = onceOf(event);
    if (howls !== null && once !== null) {
      const howl = howls[once];
      howl.volume(once === 'valve' ? VALVE_VOLUME : LIGHT_VOLUME);
      howl.play();
    }
    if (options.onCaption === undefined) return;
    const code = `view.sound.${event.type}`;
    const params = event.valve === undefined ? {} : { valve: message(`view.short.${event.valve}`) };
    options.onCaption({ code, text: message(code, params) });
  }

  return {
    showFrame(frame, tS) {
      for (const event of ear.hear(frame, tS)) happen(event);
      play(ear.levels);
      lastFrameAt = performance.now();
      restTimer ??= setTimeout(rest, REST_MS);
    },
    unlock() {
      unlocking ??= fetchSounds();
      return unlocking;
    },
    setHeard(heard) {
      listened = {};
      for (const { what, loudness } of heard) {
        const sign = SIGN_OF[what];
        if (sign === undefined) continue;
        listened[sign] = Math.max(listened[sign] ?? 0, SIGN_VOLUME * Math.min(1, loudness));
      }
      if (howls !== null) {
        for (const sign of SIGNS) setLevel(howls[sign], sign, listened[sign] ?? playing[sign]);
      }
      if (listenTimer !== null) clearTimeout(listenTimer);
      listenTimer = setTimeout(stopListening, LISTEN_MS);
    },
    setMuted(next) {
      muted = next;
      if (howls !== null) for (const name of [...LOOPS, ...ONCE]) howls[name].mute(muted);
    },
    setMessage(next) {
      message = next;
    },
    destroy() {
      alive = false;
      if (restTimer !== null) clearTimeout(restTimer);
      if (listenTimer !== null) clearTimeout(listenTimer);
      if (howls !== null) for (const name of [...LOOPS, ...ONCE]) howls[name].unload();
      howls = null;
    },
  };
}

function onceOf(event: SoundEvent): SoundName | null {
  if (event.type === 'valve-opens' || event.type === 'valve-shuts') return 'valve';
  return event.type === 'pilot-lights' || event.type === 'main-lights' ? 'light' : null;
}
