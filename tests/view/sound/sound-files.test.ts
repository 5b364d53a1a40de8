import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../../assets/page/sounds/', import.meta.url);
const names = readdirSync(folder).sort();

function samplesOf(name: string): Int16Array {
  const file = readFileSync(new URL(name, folder));
  expect(file.toString('latin1', 0, 4)).toBe('RIFF');
  expect([file.readUInt16LE(22), file.readUInt32LE(24), file.readUInt16LE(34)]).toEqual([
    1, 22050, 16,
  ]);
  return new Int16Array(file.buffer.slice(file.byteOffset + 44, file.byteOffset + file.length));
}

describe('the sound files', () => {
  it('are those the page plays', () => {
    expect(names).toEqual(
      ['alarm', 'fan', 'flame', 'gas', 'hiss', 'hunting', 'light', 'spark', 'squeal', 'valve'].map(
        (name) => `${name}.wav`,
      ),
    );
  });

  it('are small: under 400 kB in all', () => {
    const bytes = names.reduce((sum, name) => sum + readFileSync(new URL(name, folder)).length, 0);
    expect(bytes).toBeLessThan(400_000);
  });

  it.each(names)('%s is mono at 22 kHz, heard, and never at its limit', (name) => {
    const samples = samplesOf(name);
    let peak = 0;
    for (const sample of samples) peak = Math.max(peak, Math.abs(sample));
    expect(peak).toBeGreaterThan(8000);
    expect(peak).toBeLessThan(32767);
  });

  it.each(['fan.wav', 'flame.wav', 'hiss.wav', 'hunting.wav', 'squeal.wav'])(
    '%s loops without a click',
    (name) => {
      const samples = samplesOf(name);
      let largest = 0;
      for (let i = 1; i < samples.length; i += 1) {
        largest = Math.max(largest, Math.abs(samples[i] - samples[i - 1]));
      }
      const seam = Math.abs(samples[0] - samples[samples.length - 1]);
      expect(seam).toBeLessThanOrEqual(largest);
    },
  );
});
