import { describe, expect, it } from 'vitest';
import { COMMAND_BITS, type FieldParameters, prepareField } from '../../../src/field/index.ts';
import { library } from '../../support/library.ts';
import { createIdealPlant, type IdealPlant, isMade, runPlant } from '../ideal-plant.ts';

const { safetyRelay, fan, spark, upstreamValve, downstreamValve, alarm } = COMMAND_BITS;
const dairy = library.plants.find(({ id }) => id === 'dairy') as FieldParameters;
const FIRING = safetyRelay | fan | upstreamValve | downstreamValve;
const LIGHT_OFF = 2;

type Wiring = FieldParameters['wiring'];

/** The dairy's field, lit, and then something done to its wiring. */
function firing(change: (wiring: Wiring, plant: IdealPlant) => void = () => undefined): IdealPlant {
  const plant = createIdealPlant(JSON.parse(JSON.stringify(dairy)) as FieldParameters);
  plant.field.panel.callForHeat = true;
  runPlant(plant, FIRING, LIGHT_OFF, 2);
  change(plant.field.parameters.wiring, plant);
  prepareField(plant.field);
  runPlant(plant, FIRING, LIGHT_OFF, 2);
  return plant;
}

describe('a sound circuit', () => {
  it('feeds what it is told to, and lets every reading through as it is', () => {
    const { field } = firing();
    expect(field.outputs.upstreamValve && field.outputs.downstreamValve).toBe(true);
    for (const { input } of field.wiring.channels) {
      expect(input).toEqual({ gain: 1, zero: 0, most: expect.any(Number) });
      expect(input.most).toBeGreaterThan(0);
    }
  });
});

describe('the control fuse', () => {
  it('open, leaves nothing behind it made', () => {
    const plant = firing(({ fuses }) => Object.assign(fuses[0] as object, { condition: 'blown' }));
    const { netlist, working } = plant.field.wiring;
    const left = netlist.elements.filter((_element, i) => working[i] === 1);
    // Before it are the monitor of the supply, and the safety circuit with a fuse of its own.
    expect(left.map(({ name }) => name)).toEqual(['in.supplyInBand', 'in.emergencyStopClear']);
    const { outputs } = plant.field;
    expect([outputs.upstreamValve, outputs.downstreamValve, outputs.feedPump]).toEqual([
      false,
      false,
      false,
    ]);
  });

  it('blows by itself on an earth fault behind it, and stays blown when that is mended', () => {
    const plant = firing(({ bridges }) => {
      bridges.push({ from: '61', to: 'earth', ohm: 0.5 });
    });
    expect(isMade(plant, 'controlFuseMade')).toBe(false);
    plant.field.parameters.wiring.bridges.length = 0;
    prepareField(plant.field);
    runPlant(plant, FIRING, LIGHT_OFF, 1);
    expect(isMade(plant, 'controlFuseMade')).toBe(false);
  });

  it('carries what the plant takes for ever', () => {
    const plant = firing();
    runPlant(plant, FIRING | spark | alarm, LIGHT_OFF, 30);
    expect(isMade(plant, 'controlFuseMade')).toBe(true);
  });
});

describe('a bad joint', () => {
  it('off, takes the volts from what is behind it and nothing else', () => {
    const plant = firing(({ joints }) => joints.push({ terminal: 'upstream-valve:1', ohm: 1e12 }));
    const { outputs } = plant.field;
    expect([outputs.upstreamValve, outputs.downstreamValve]).toEqual([false, true]);
  });

  it.each([
    // The upstream valve is 320 Ω and lets go below 0.35 of its volts: 600 Ω in series.
    [300, true],
    [900, false],
  ])('of %i Ω: a coil that is in holds down to its drop-out volts', (ohm, holds) => {
    const plant = firing(({ joints }) => joints.push({ terminal: 'upstream-valve:1', ohm }));
    expect(plant.field.outputs.upstreamValve).toBe(holds);
  });

  it('keeps a coil from pulling in that it would have let hold', () => {
    const plant = firing(({ joints }) => joints.push({ terminal: 'upstream-valve:1', ohm: 300 }));
    runPlant(plant, safetyRelay | fan, LIGHT_OFF, 1);
    runPlant(plant, FIRING, LIGHT_OFF, 1);
    expect(plant.field.outputs.upstreamValve).toBe(false);
  });

  it('in the neutral of the supply leaves no volts to work with', () => {
    const plant = firing(({ joints }) => joints.push({ terminal: 'mains:2', ohm: 1e12 }));
    expect(plant.field.outputs.upstreamValve).toBe(false);
    expect(isMade(plant, 'supplyInBand')).toBe(false);
  });

  it('of some ohms in the supply pulls the volts out of band only under load', () => {
    const plant = firing(({ joints }) => joints.push({ terminal: 'mains:1', ohm: 18 }));
    expect(isMade(plant, 'supplyInBand')).toBe(false);
    runPlant(plant, 0, 0, 2);
    expect(isMade(plant, 'supplyInBand')).toBe(true);
  });
});

describe('bridges and swaps', () => {
  it('a jumper across a limit makes its input whatever the limit does', () => {
    const plant = firing(({ bridges }, { readings }) => {
      bridges.push({ from: 'L1', to: '24', ohm: 0.05 });
      readings.regulatedPa = 0;
    });
    expect(isMade(plant, 'gasPressureAboveLow')).toBe(true);
  });

  it('two swapped wires answer for each other', () => {
    const plant = firing(({ swaps }, { readings }) => {
      swaps.push({ one: 'in.gasPressureAboveLow:1', other: 'in.gasPressureBelowHigh:1' });
      readings.regulatedPa = 0;
    });
    expect([isMade(plant, 'gasPressureAboveLow'), isMade(plant, 'gasPressureBelowHigh')]).toEqual([
      true,
      false,
    ]);
  });
});

describe('the emergency stop', () => {
  it('takes the feed of fuel and ignition by itself, whatever is commanded', () => {
    const plant = firing();
    plant.field.panel.emergencyStopPressed = true;
    runPlant(plant, FIRING | spark, LIGHT_OFF, 0.02);
    const { outputs } = plant.field;
    expect([outputs.upstreamValve, outputs.downstreamValve, outputs.sparkW]).toEqual([
      false,
      false,
      0,
    ]);
    expect(isMade(plant, 'emergencyStopClear')).toBe(false);
  });
});

describe('signals', () => {
  it('a broken loop reads a quarter of the span below the range: 0 mA of 4 to 20', () => {
    const plant = firing(({ joints }) => joints.push({ terminal: 'vessel.loop:1', ohm: 1e12 }));
    // 1.6 MPa of range; what insulation lets through is below a pascal.
    expect(Math.abs(plant.field.outputs.vesselPa + 4e5)).toBeLessThan(1);
  });

  it('a loop with too much resistance is held down by its compliance, and reads right below it', () => {
    const plant = firing(({ joints }) => joints.push({ terminal: 'vessel.loop:1', ohm: 700 }));
    // (24 − 10) V over 951 Ω: 14.7 mA, which is 0.67 of 1.6 MPa; the vessel stands at 1.1 MPa.
    const { vesselPa } = plant.field.outputs;
    expect(Math.abs(vesselPa - ((14 / 951.07 - 0.004) / 0.016) * 1.6e6)).toBeLessThan(2000);
    plant.readings.vesselPa = 5e5;
    runPlant(plant, FIRING, LIGHT_OFF, 20);
    expect(Math.abs(plant.field.outputs.vesselPa - 5e5)).toBeLessThan(10);
  });

  it('an open wiper reads below its track, an open lower leg the top of it', () => {
    const wiper = firing(({ joints }) => joints.push({ terminal: 'damper.wiper:2', ohm: 1e12 }));
    expect(Math.abs(wiper.field.damper?.feedbackDeg ?? 0) - 22.5).toBeLessThan(0.01);
    const leg = firing(({ joints }) => joints.push({ terminal: 'damper.lower:2', ohm: 1e12 }));
    expect(Math.abs((leg.field.damper?.feedbackDeg ?? 0) - 90)).toBeLessThan(0.5);
  });

  it('a lost speed reference stops the fan, however fast it is told to turn', () => {
    const plant = firing(({ joints }) => joints.push({ terminal: 'ao.fan:2', ohm: 1e12 }));
    runPlant(plant, FIRING, LIGHT_OFF, 60);
    expect(plant.field.outputs.fanTargetRpm).toBeGreaterThan(800);
    expect(plant.field.outputs.fanRpm).toBeLessThan(1);
  });

  it('wet insulation to earth takes flame signal away', () => {
    const plant = firing(({ bridges }) => bridges.push({ from: '90', to: 'earth', ohm: 100_000 }));
    const sound = firing();
    const share =
      plant.field.outputs.flameMicroamps / Math.max(1e-9, sound.field.outputs.flameMicroamps);
    // Beside the amplifier's own 100 kΩ: half of it; both have the noise of the same seed.
    expect(Math.abs(share - 0.5)).toBeLessThan(0.01);
  });
});
