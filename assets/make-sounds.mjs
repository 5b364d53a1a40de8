/**
 * Makes the sounds of the simulator: `node assets/make-sounds.mjs`.
 *
 * Everything is synthesised here from seeded noise and sines, so that the files can be made
 * again, and nobody's recording is in them. Loops close without a click: noise
 * is filtered in a ring, and every tone has a whole number of cycles in the loop.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const RATE_HZ = 22050;
const out = join(dirname(fileURLToPath(import.meta.url)), 'page', 'sounds');

/** A small generator of good enough noise (xorshift), the same on every machine. */
function noiseSource(seed) {
  let state = seed >>> 0;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return ((state >>> 0) / 0xffffffff) * 2 - 1;
  };
}

function samples(seconds) {
  return new Float64Array(Math.round(seconds * RATE_HZ));
}

function noise(seconds, seed) {
  const next = noiseSource(seed);
  return samples(seconds).map(next);
}

/** One-pole low pass run round the ring twice, so that its end meets its beginning. */
function lowPass(signal, cutHz) {
  const share = 1 - Math.exp((-2 * Math.PI * cutHz) / RATE_HZ);
  const filtered = new Float64Array(signal.length);
  let state = 0;
  for (let pass = 0; pass < 2; pass += 1) {
    for (let i = 0; i < signal.length; i += 1) {
      state += share * (signal[i] - state);
      filtered[i] = state;
    }
  }
  return filtered;
}

function highPass(signal, cutHz) {
  const low = lowPass(signal, cutHz);
  return signal.map((value, i) => value - low[i]);
}

/** A tone with a whole number of cycles in the loop, as near as may be to the frequency. */
function tone(length, hz, phase = 0) {
  const cycles = Math.max(1, Math.round((hz * length) / RATE_HZ));
  return new Float64Array(length).map((_value, i) =>
    Math.sin((2 * Math.PI * cycles * i) / length + phase),
  );
}

function mix(...parts) {
  const sum = new Float64Array(parts[0][0].length);
  for (const [signal, gain] of parts) {
    for (let i = 0; i < sum.length; i += 1) sum[i] += gain * signal[i];
  }
  return sum;
}

function level(signal, peak) {
  let greatest = 0;
  for (const value of signal) greatest = Math.max(greatest, Math.abs(value));
  return signal.map((value) => (value / greatest) * peak);
}

/** Rotor hum with its blade-passing tone, and the rush of the air. */
function fan() {
  const rush = lowPass(noise(1.4, 11), 900);
  const hum = [58, 116, 174, 348].map((hz, i) => tone(rush.length, hz, i * 1.3));
  const throb = tone(rush.length, 6);
  const air = level(rush, 1).map((value, i) => value * (0.85 + 0.15 * throb[i]));
  return level(mix([air, 0.7], [hum[0], 0.35], [hum[1], 0.22], [hum[2], 0.1], [hum[3], 0.12]), 0.8);
}

function gas() {
  return level(highPass(lowPass(noise(1, 23), 6500), 2200), 0.6);
}

/** A furnace rumbles low and uneven; the unevenness closes with the loop. */
function flame() {
  const deep = level(lowPass(lowPass(noise(1.4, 37), 160), 240), 1);
  const body = level(lowPass(noise(1.4, 41), 700), 1);
  const slow = tone(deep.length, 2.1);
  const quick = tone(deep.length, 5, 0.8);
  return level(
    deep.map((value, i) => value * (1 + 0.18 * slow[i] + 0.1 * quick[i]) + 0.28 * body[i]),
    0.85,
  );
}

/** A transformer's spark: a snap every half wave of the mains, none like the last. */
function spark() {
  const signal = samples(0.5);
  const next = noiseSource(53);
  const period = Math.round(RATE_HZ / 100);
  for (let start = 0; start + period <= signal.length; start += period) {
    const strength = 0.6 + 0.4 * Math.abs(next());
    for (let i = 0; i < period; i += 1) {
      signal[start + i] += strength * next() * Math.exp(-i / 28);
    }
  }
  return level(highPass(signal, 1400), 0.55);
}

/** A solenoid valve going home: the blow in the pipe, and the click of the plunger. */
function valve() {
  const signal = samples(0.18);
  const next = noiseSource(71);
  return level(
    signal.map((_value, i) => {
      const t = i / RATE_HZ;
      const blow = Math.sin(2 * Math.PI * 130 * t) * Math.exp(-t * 34);
      const ring = Math.sin(2 * Math.PI * 870 * t) * Math.exp(-t * 70) * 0.5;
      return blow + ring + next() * Math.exp(-t * 260) * 0.9;
    }),
    0.8,
  );
}

/** Gas taking light: a soft push of air, no bang. */
function light() {
  const push = lowPass(lowPass(noise(0.55, 89), 220), 300);
  return level(
    push.map((value, i) => {
      const t = i / RATE_HZ;
      return value * Math.min(1, t / 0.05) * Math.exp(-t * 6) * Math.min(1, (0.55 - t) / 0.05);
    }),
    0.8,
  );
}

/** Two tones in turn, and a rest: asks for attention without startling. */
function alarm() {
  const signal = samples(1);
  return level(
    signal.map((_value, i) => {
      const t = i / RATE_HZ;
      const first = t < 0.28;
      const second = t >= 0.34 && t < 0.62;
      if (!first && !second) return 0;
      const local = first ? t : t - 0.34;
      const edge = Math.min(1, local / 0.015, (0.28 - local) / 0.03);
      const hz = first ? 660 : 550;
      return edge * (Math.sin(2 * Math.PI * hz * t) + 0.25 * Math.sin(4 * Math.PI * hz * t));
    }),
    0.55,
  );
}

/** A belt that slips: a strained tone with its overtones, wavering as the pulley turns. */
function squeal() {
  const length = samples(0.6).length;
  const waver = tone(length, 11);
  const parts = [1180, 2360, 3540, 1310].map((hz, i) => tone(length, hz, i * 0.9));
  const rasp = level(highPass(lowPass(noise(0.6, 97), 5200), 1800), 1);
  const sung = mix([parts[0], 0.7], [parts[1], 0.35], [parts[2], 0.18], [parts[3], 0.25]);
  return level(
    sung.map((value, i) => (value + 0.4 * rasp[i]) * (0.72 + 0.28 * waver[i])),
    0.5,
  );
}

/** A regulator that hunts: its rush swells and sinks, with a hum that goes along. */
function hunting() {
  const rush = level(highPass(lowPass(noise(1, 101), 3400), 500), 1);
  const hum = tone(rush.length, 92);
  const swell = tone(rush.length, 2, -1.2);
  return level(
    rush.map((value, i) => (0.6 * value + 0.5 * hum[i]) * (0.5 + 0.5 * swell[i])),
    0.6,
  );
}

/** Gas out of a small opening into the room: a high, even hiss. */
function hiss() {
  return level(highPass(lowPass(noise(0.7, 103), 9500), 4200), 0.5);
}

/** RIFF WAVE, one channel, 16-bit PCM. */
function wav(signal) {
  const data = Buffer.alloc(44 + signal.length * 2);
  data.write('RIFF', 0);
  data.writeUInt32LE(36 + signal.length * 2, 4);
  data.write('WAVEfmt ', 8);
  data.writeUInt32LE(16, 16);
  data.writeUInt16LE(1, 20);
  data.writeUInt16LE(1, 22);
  data.writeUInt32LE(RATE_HZ, 24);
  data.writeUInt32LE(RATE_HZ * 2, 28);
  data.writeUInt16LE(2, 32);
  data.writeUInt16LE(16, 34);
  data.write('data', 36);
  data.writeUInt32LE(signal.length * 2, 40);
  signal.forEach((value, i) => {
    data.writeInt16LE(Math.round(Math.max(-1, Math.min(1, value)) * 32767), 44 + i * 2);
  });
  return data;
}

mkdirSync(out, { recursive: true });
const sounds = { fan, gas, flame, spark, valve, light, alarm, squeal, hunting, hiss };
let bytes = 0;
for (const [name, make] of Object.entries(sounds)) {
  const file = wav(make());
  bytes += file.length;
  writeFileSync(join(out, `${name}.wav`), file);
}
process.stdout.write(`${Object.keys(sounds).length} sounds, ${Math.round(bytes / 1000)} kB\n`);
