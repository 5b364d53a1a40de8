import { type Channel, type ChannelIndex, indexChannels, readAt } from '../channels.ts';
import { bitOf, isSet, terminalOf, type Vocabulary } from '../vocabulary.ts';
import { createEvidenceEar } from './evidence-ear.ts';

/** How loud each lasting sound is (0…1), and how fast the fan's loop runs. */
export interface SoundLevels {
  fanVolume: number;
  fanRate: number;
  gasVolume: number;
  flameVolume: number;
  sparkVolume: number;
  alarmVolume: number;
  squealVolume: number;
  huntingVolume: number;
  hissVolume: number;
}

/** Something that is heard once; `valve` names the valve of a valve sound. */
export interface SoundEvent {
  readonly type: SoundEventType;
  readonly valve?: string;
}
export type SoundEventType =
  | 'fan-starts'
  | 'fan-stops'
  | 'spark'
  | 'spark-stops'
  | 'valve-opens'
  | 'valve-shuts'
  | 'pilot-lights'
  | 'main-lights'
  | 'flame-out'
  | 'alarm'
  | 'alarm-stops'
  | 'belt-squeals'
  | 'regulator-hunts'
  | 'vent-hisses';

/** Hears a run frame by frame; keeps only what it needs to notice a change. */
export interface SoundEar {
  readonly levels: SoundLevels;
  /**
   * @param tS time of the frame; after a jump in time nothing is heard to have happened
   */
  hear(frame: Float64Array, tS: number): readonly SoundEvent[];
}

const FULL_RPM = 1760;
const SLOWEST_RATE = 0.35;
const FULL_GAS_KG_S = 0.02;
const TURNS_RPM = 30;
const SPARK_SEEN_W = 1;
const LIT = 0.15;
const JUMP_S = 1.5;
/** Levels move in steps, so that a steady sound is left alone. */
const STEPS = 50;

export function createSoundEar(channels: readonly Channel[], vocabulary: Vocabulary): SoundEar {
  const index = indexChannels(channels);
  const valves = valvesOf(channels, vocabulary);
  const places = {
    fan: index.indexOf('fan.speed'),
    spark: index.indexOf('spark.power'),
    pilot: index.indexOf('pilot.intensity'),
    main: index.indexOf('main.intensity'),
    commands: index.indexOf('logic.commands'),
    flows: flowPlaces(channels, index),
    stems: valves.map((id) => index.indexOf(`gas.${id}.opening`)),
  };
  const alarmBit = bitOf(vocabulary.commands, 'alarm');
  const levels: SoundLevels = {
    fanVolume: 0,
    fanRate: SLOWEST_RATE,
    gasVolume: 0,
    flameVolume: 0,
    sparkVolume: 0,
    alarmVolume: 0,
    squealVolume: 0,
    huntingVolume: 0,
    hissVolume: 0,
  };
  const was = {
    fan: false,
    spark: false,
    pilot: false,
    main: false,
    alarm: false,
    squeal: false,
    hunting: false,
    hiss: false,
  };
  const stems = valves.map(() => false);
  const evidence = createEvidenceEar(channels);
  let lastS: number | null = null;

  return {
    levels,
    hear(frame, tS) {
      const events: SoundEvent[] = [];
      const quiet = lastS === null || tS < lastS || tS - lastS > JUMP_S;
      lastS = tS;
      const note = (type: SoundEventType, valve?: string): void => {
        if (!quiet) events.push(valve === undefined ? { type } : { type, valve });
      };

      const rpm = Math.max(0, readAt(frame, places.fan));
      levels.fanVolume = stepped(Math.min(1, rpm / FULL_RPM) ** 0.7 * 0.8);
      levels.fanRate = stepped(Math.max(SLOWEST_RATE, rpm / FULL_RPM));
      let gas = 0;
      for (const place of places.flows) gas = Math.max(gas, Math.abs(readAt(frame, place)));
      levels.gasVolume = stepped(Math.sqrt(Math.min(1, gas / FULL_GAS_KG_S)) * 0.45);
      const pilot = readAt(frame, places.pilot);
      const main = readAt(frame, places.main);
      levels.flameVolume = stepped(Math.min(1, 0.12 * pilot + 0.9 * main));
      const sparks = readAt(frame, places.spark) > SPARK_SEEN_W;
      levels.sparkVolume = sparks ? 0.6 : 0;
      const alarms = isSet(readAt(frame, places.commands), alarmBit);
      levels.alarmVolume = alarms ? 0.7 : 0;

      const signs = evidence.hear(frame, tS);
      levels.squealVolume = stepped(0.6 * signs.squeal);
      levels.huntingVolume = stepped(0.6 * signs.hunting);
      levels.hissVolume = stepped(0.6 * signs.hiss);

      if (turned('squeal', isHeard(signs.squeal, was.squeal)) && was.squeal) note('belt-squeals');
      if (turned('hunting', isHeard(signs.hunting, was.hunting)) && was.hunting) {
        note('regulator-hunts');
      }
      if (turned('hiss', isHeard(signs.hiss, was.hiss)) && was.hiss) note('vent-hisses');
      if (turned('fan', rpm > TURNS_RPM)) note(was.fan ? 'fan-starts' : 'fan-stops');
      if (turned('spark', sparks)) note(was.spark ? 'spark' : 'spark-stops');
      for (let i = 0; i < valves.length; i += 1) {
        const open = readAt(frame, places.stems[i]) > (stems[i] ? 0.15 : 0.5);
        if (open === stems[i]) continue;
        stems[i] = open;
        note(open ? 'valve-opens' : 'valve-shuts', valves[i]);
      }
      const burnt = was.pilot || was.main;
      if (turned('pilot', pilot > LIT) && was.pilot) note('pilot-lights');
      if (turned('main', main > LIT) && was.main) note('main-lights');
      if (burnt && !was.pilot && !was.main) note('flame-out');
      if (turned('alarm', alarms)) note(was.alarm ? 'alarm' : 'alarm-stops');
      return events;
    },
  };

  function turned(what: keyof typeof was, now: boolean): boolean {
    const changed = was[what] !== now;
    was[what] = now;
    return changed;
  }
}

/** Heard from here on, and until it is fainter than that. */
function isHeard(loudness: number, was: boolean): boolean {
  return loudness > (was ? STILL_HEARD : HEARD);
}
const HEARD = 0.1;
const STILL_HEARD = 0.04;

/** Solenoid valves clack; a cock or a servo valve does not. */
export function valvesOf(channels: readonly Channel[], vocabulary: Vocabulary): string[] {
  return channels
    .map((channel) => /^gas\.(.+)\.opening$/.exec(channel.id)?.[1])
    .filter(
      (id): id is string => id !== undefined && bitOf(vocabulary.commands, terminalOf(id)) !== 0,
    );
}

function flowPlaces(channels: readonly Channel[], index: ChannelIndex): number[] {
  return channels
    .filter((channel) => /^gas\..+\.flow$/.test(channel.id))
    .map((channel) => index.indexOf(channel.id));
}

function stepped(value: number): number {
  return Math.round(value * STEPS) / STEPS;
}
