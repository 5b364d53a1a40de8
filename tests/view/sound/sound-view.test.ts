import { describe, expect, it } from 'vitest';
import { message } from '../../../src/i18n/index.ts';
import { createSoundEar, valvesOf } from '../../../src/view/sound/sound-view.ts';
import { channels, frameWith, vocabulary, wordOf } from '../frames.ts';

const ear = () => createSoundEar(channels, vocabulary);

describe('the plant as it is heard', () => {
  it('the fan runs up in pitch and loudness with its speed, and is still at rest', () => {
    const listener = ear();
    listener.hear(frameWith({}), 0);
    expect(listener.levels.fanVolume).toBe(0);
    listener.hear(frameWith({ 'fan.speed': 900 }), 0.1);
    const half = { ...listener.levels };
    listener.hear(frameWith({ 'fan.speed': 1760 }), 0.2);
    expect(listener.levels.fanVolume).toBeGreaterThan(half.fanVolume);
    expect(listener.levels.fanRate).toBe(1);
    expect(half.fanRate).toBeCloseTo(0.51, 1);
  });

  it('a valve clacks once as it opens and once as it shuts, however slowly', () => {
    const listener = ear();
    const stems = [0, 0.1, 0.3, 0.49, 0.51, 0.9, 1, 0.8, 0.4, 0.2, 0.1, 0];
    const heard = stems.flatMap((stem, i) =>
      listener.hear(frameWith({ 'gas.upstream-valve.opening': stem }), i * 0.1),
    );
    expect(heard).toEqual([
      { type: 'valve-opens', valve: 'upstream-valve' },
      { type: 'valve-shuts', valve: 'upstream-valve' },
    ]);
  });

  it('cocks and servo valves do not clack', () => {
    expect(valvesOf(channels, vocabulary)).toEqual([
      'upstream-valve',
      'vent-valve',
      'downstream-valve',
      'pilot-valve',
    ]);
  });

  it('tells spark, pilot, main flame and their end', () => {
    const listener = ear();
    const heard = [
      frameWith({}),
      frameWith({ 'spark.power': 80 }),
      frameWith({ 'spark.power': 80, 'pilot.intensity': 0.8 }),
      frameWith({ 'pilot.intensity': 0.8, 'main.intensity': 0.6 }),
      frameWith({ 'main.intensity': 0.9 }),
      frameWith({}),
    ].flatMap((frame, i) => listener.hear(frame, i * 0.1));
    expect(heard.map(({ type }) => type)).toEqual([
      'spark',
      'pilot-lights',
      'spark-stops',
      'main-lights',
      'flame-out',
    ]);
  });

  it('a pilot that goes out under a burning main flame is not called flame out', () => {
    const listener = ear();
    listener.hear(frameWith({ 'pilot.intensity': 0.8, 'main.intensity': 0.8 }), 0);
    expect(listener.hear(frameWith({ 'main.intensity': 0.8 }), 0.1)).toEqual([]);
  });

  it('the alarm is heard while it is commanded', () => {
    const listener = ear();
    listener.hear(frameWith({}), 0);
    const alarm = frameWith({ 'logic.commands': wordOf(vocabulary.commands, 'alarm') });
    expect(listener.hear(alarm, 0.1)).toEqual([{ type: 'alarm' }]);
    expect(listener.levels.alarmVolume).toBeGreaterThan(0);
  });

  it('a jump in time is silent: nothing is heard to have happened between', () => {
    const listener = ear();
    listener.hear(frameWith({}), 0);
    const later = frameWith({ 'main.intensity': 1, 'gas.upstream-valve.opening': 1 });
    expect(listener.hear(later, 90)).toEqual([]);
    expect(listener.hear(frameWith({}), 3)).toEqual([]);
    expect(listener.hear(frameWith({ 'spark.power': 80 }), 3.1)).toEqual([{ type: 'spark' }]);
  });

  it('everything that is heard can be said', () => {
    for (const type of [
      'fan-starts',
      'fan-stops',
      'spark',
      'spark-stops',
      'pilot-lights',
      'main-lights',
      'flame-out',
      'alarm',
      'alarm-stops',
    ]) {
      expect(message(`view.sound.${type}`).length).toBeGreaterThan(5);
    }
    for (const id of valvesOf(channels, vocabulary)) {
      const valve = message(`view.short.${id}`);
      expect(message('view.sound.valve-opens', { valve })).toContain(valve);
    }
  });
});
