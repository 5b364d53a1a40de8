import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ALL_INPUTS,
  COMMAND_BITS,
  CONTROL_SECTIONS,
  createField,
  createReadings,
  FIELD_SECTIONS,
  type FieldParameters,
  findFieldIssues,
  fixedSpeedParameters,
  INPUT_BITS,
  irSensorParameters,
  prepareField,
  type ServoParameters,
  servoParameters,
  settleField,
  TARGET_INDEX,
} from '../../src/field/index.ts';
import { dairyField, wired } from './dairy-field.ts';
import { fillDefaults } from './fill-defaults.ts';
import { createIdealPlant, type InputName, isMade, madeInputs, runPlant } from './ideal-plant.ts';

const { safetyRelay, fan, spark, pilotValve, upstreamValve, downstreamValve, ventValve, countAir } =
  COMMAND_BITS;
const { rest, purge, curve } = TARGET_INDEX;
const lightOff = TARGET_INDEX['light-off'];
const lowFire = TARGET_INDEX['low-fire'];

describe('a healthy field', () => {
  it('at rest shows everything sound and nothing proved that is not', () => {
    const plant = createIdealPlant(dairyField());
    expect(madeInputs(plant)).toEqual([
      'emergencyStopClear',
      'supplyInBand',
      'controlFuseMade',
      'waterAboveFirst',
      'waterAboveSecond',
      'highLimitMade',
      'furnacePressureInBand',
      'gasPressureAboveLow',
      'gasPressureBelowHigh',
      'upstreamValveClosed',
      'downstreamValveClosed',
      'interspaceEmpty',
      'positionsOnCurve',
      'speedOnCurve',
      'warmUpSatisfied',
    ]);
  });

  it('fed with ideal readings, brings every proof of a start in its order', () => {
    const plant = createIdealPlant(dairyField());
    const order: string[] = [];
    let before = plant.word;
    const note = () => {
      const moved = plant.word ^ before;
      before = plant.word;
      for (const [name, bit] of Object.entries(INPUT_BITS)) {
        if ((moved & bit) !== 0) order.push(`${(plant.word & bit) !== 0 ? '+' : '-'}${name}`);
      }
    };
    plant.field.panel.callForHeat = true;
    runPlant(plant, 0, rest, 1, note);
    runPlant(plant, safetyRelay, rest, 1, note);
    runPlant(plant, safetyRelay | ventValve, rest, 2, note);
    runPlant(plant, safetyRelay | upstreamValve, rest, 2, note);
    runPlant(plant, safetyRelay, rest, 5, note);
    runPlant(plant, safetyRelay | fan, purge, 40, note);
    runPlant(plant, safetyRelay | fan | countAir, purge, 60, note);
    runPlant(plant, safetyRelay | fan, lightOff, 30, note);
    runPlant(plant, safetyRelay | fan | spark, lightOff, 2, note);
    runPlant(plant, safetyRelay | fan | spark | pilotValve, lightOff, 5, note);
    const fuel = upstreamValve | downstreamValve;
    runPlant(plant, safetyRelay | fan | pilotValve | fuel, lightOff, 5, note);
    runPlant(plant, safetyRelay | fan | fuel, lowFire, 10, note);
    runPlant(plant, safetyRelay | fan | fuel, curve, 60, note);
    runPlant(plant, safetyRelay | fan | fuel, lowFire, 40, note);
    runPlant(plant, safetyRelay | fan, lightOff, 5, note);
    runPlant(plant, 0, rest, 60, note);
    expect(order).toEqual([
      '+callForHeat',
      '+safetyRelayFeedback',
      '-upstreamValveClosed',
      '-interspaceEmpty',
      '+interspaceFull',
      '+upstreamValveClosed',
      '+airProved',
      '+fanAtPurgeSpeed',
      '+damperAtPurge',
      '+airChangesCounted',
      '-airChangesCounted',
      '-damperAtPurge',
      '-fanAtPurgeSpeed',
      '+fuelValveAtLightOff',
      '+fanAtLightOffSpeed',
      '+damperAtLightOff',
      '+flame',
      '-upstreamValveClosed',
      '-downstreamValveClosed',
      '-fuelValveAtLightOff',
      '-damperAtLightOff',
      '-fanAtLightOffSpeed',
      '+fanAtLightOffSpeed',
      '+damperAtLightOff',
      '+fuelValveAtLightOff',
      '+upstreamValveClosed',
      '+downstreamValveClosed',
      '-flame',
      '-safetyRelayFeedback',
      '-fuelValveAtLightOff',
      '-damperAtLightOff',
      '-fanAtLightOffSpeed',
      '-airProved',
    ]);
  });

  it('drives every load it is told to, once its safety relay is in', () => {
    const plant = createIdealPlant(dairyField());
    const all = spark | pilotValve | upstreamValve | downstreamValve | ventValve | fan;
    const { outputs } = plant.field;
    runPlant(plant, all, purge, 1);
    expect(outputs).toMatchObject({
      sparkW: 0,
      pilotValve: false,
      upstreamValve: false,
      downstreamValve: false,
      ventValve: true,
    });
    expect(outputs.fanRpm).toBeGreaterThan(0);
    runPlant(plant, all | safetyRelay, purge, 1);
    // Rated 60 W at 120 V; a few amps over 0.5 Ω of supply and joints cost a volt, so 2 %.
    expect(outputs.sparkW).toBeGreaterThan(57);
    expect(outputs.sparkW).toBeLessThan(60);
    expect(outputs).toMatchObject({
      pilotValve: true,
      upstreamValve: true,
      downstreamValve: true,
      ventValve: true,
    });
  });

  it('reads the same word for the same seed and history, bit for bit, and noise differs by seed', () => {
    const walk = (seed: number) => {
      const plant = createIdealPlant(dairyField(), seed);
      const words: number[] = [];
      const signals: number[] = [];
      runPlant(plant, safetyRelay | fan | pilotValve, lightOff, 40, ({ word, field }) => {
        words.push(word);
        signals.push(field.outputs.flameMicroamps);
      });
      return { words, signals };
    };
    const first = walk(3);
    expect(walk(3)).toEqual(first);
    expect(walk(4).signals).not.toEqual(first.signals);
  });

  it('does the same at 5 ms steps: every proof within 20 ms', () => {
    const times = (stepS: number) => {
      const plant = createIdealPlant(dairyField(), 1, stepS);
      const seen = new Map<InputName, number>();
      const note = () => {
        for (const name of madeInputs(plant)) if (!seen.has(name)) seen.set(name, plant.timeS);
      };
      runPlant(plant, safetyRelay | ventValve, rest, 1, note);
      runPlant(plant, safetyRelay | upstreamValve, rest, 2, note);
      runPlant(plant, safetyRelay | fan | countAir, purge, 90, note);
      runPlant(plant, safetyRelay | fan | pilotValve, lightOff, 40, note);
      return seen;
    };
    const whole = times(0.01);
    const half = times(0.005);
    expect([...half.keys()].sort()).toEqual([...whole.keys()].sort());
    for (const [name, t] of whole) {
      expect(Math.abs((half.get(name) as number) - t), name).toBeLessThan(0.02);
    }
  });
});

describe('what the field cuts by itself', () => {
  const firing = safetyRelay | fan | pilotValve | upstreamValve | downstreamValve;
  const isFuelOff = (plant: ReturnType<typeof createIdealPlant>) => {
    const { pilotValve: pilot, upstreamValve: up, downstreamValve: down } = plant.field.outputs;
    return !pilot && !up && !down && plant.field.outputs.sparkW === 0;
  };
  const lit = (change?: (parameters: FieldParameters) => void) => {
    const parameters = dairyField();
    change?.(parameters);
    const plant = createIdealPlant(parameters);
    runPlant(plant, firing, lightOff, 40);
    return plant;
  };

  it('cuts fuel and spark, but not the fan, when the safety relay drops', () => {
    const plant = lit();
    expect(isFuelOff(plant)).toBe(false);
    runPlant(plant, firing & ~safetyRelay, lightOff, 0.1);
    expect(isFuelOff(plant)).toBe(true);
    runPlant(plant, firing & ~safetyRelay, lightOff, 5);
    expect(plant.field.outputs.fanRpm).toBeGreaterThan(850);
  });

  it.each(['isolator', 'fuse'])('cuts everything, the fan too, with the %s open', (what) => {
    const plant = lit();
    if (what === 'isolator') {
      plant.field.panel.supplyOn = false;
    } else {
      setFuse(plant.field.parameters, 'blown');
      prepareField(plant.field);
    }
    runPlant(plant, firing, lightOff, 0.1);
    expect(isFuelOff(plant)).toBe(true);
    expect(isMade(plant, 'flame')).toBe(false);
    // A fuse that blows is seen at its terminal; without any supply only its loss can be.
    expect(isMade(plant, 'controlFuseMade')).toBe(what === 'isolator');
    expect(isMade(plant, 'supplyInBand')).toBe(what !== 'isolator');
    runPlant(plant, firing, lightOff, 120);
    expect(plant.field.outputs.fanRpm).toBe(0);
  });

  it('still cuts fuel through the safety relay when an output relay is welded', () => {
    const plant = lit(({ field }) => {
      for (const relay of field.relays) {
        if (relay.terminal === 'upstreamValve') relay.contact = 'welded';
      }
    });
    runPlant(plant, safetyRelay | fan, lightOff, 1);
    expect(plant.field.outputs.upstreamValve).toBe(true);
    runPlant(plant, fan, lightOff, 1);
    expect(plant.field.outputs.upstreamValve).toBe(false);
  });

  it('never feeds fuel or spark without command, supply, fuse and safety relay, whatever happens', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            commands: fc.nat(511),
            target: fc.nat(4),
            supplyOn: fc.boolean(),
            fuseIntact: fc.boolean(),
            tenths: fc.integer({ min: 1, max: 8 }),
          }),
          { maxLength: 25 },
        ),
        (history) => {
          const plant = createIdealPlant(dairyField());
          const { field } = plant;
          for (const { commands, target, supplyOn, fuseIntact, tenths } of history) {
            field.panel.supplyOn = supplyOn;
            setFuse(field.parameters, fuseIntact ? 'sound' : 'blown');
            prepareField(field);
            // 30 ms of drop-out of an output relay, then nothing may be left.
            runPlant(plant, commands, target, tenths / 10);
            const allowed = supplyOn && fuseIntact && (commands & safetyRelay) !== 0;
            const { outputs } = field;
            const told = (bit: number) => allowed && (commands & bit) !== 0;
            expect(outputs.upstreamValve).toBe(told(upstreamValve));
            expect(outputs.downstreamValve).toBe(told(downstreamValve));
            expect(outputs.pilotValve).toBe(told(pilotValve));
            expect(outputs.sparkW > 0).toBe(told(spark));
          }
        },
      ),
      { seed: 51, numRuns: 40 },
    );
  });
});

describe('panel', () => {
  it('calls for heat only with its switch on and the operating control made', () => {
    const plant = createIdealPlant(dairyField());
    const { panel } = plant.field;
    runPlant(plant, 0, rest, 1);
    expect(isMade(plant, 'callForHeat')).toBe(false);
    panel.callForHeat = true;
    runPlant(plant, 0, rest, 0.1);
    expect(isMade(plant, 'callForHeat')).toBe(true);
    plant.readings.vesselPa = 1.3e6;
    runPlant(plant, 0, rest, 2);
    expect(isMade(plant, 'callForHeat')).toBe(false);
    plant.readings.vesselPa = 1.1e6;
    runPlant(plant, 0, rest, 2);
    expect(isMade(plant, 'callForHeat')).toBe(true);
    panel.secondSetpoint = true;
    runPlant(plant, 0, rest, 2);
    expect(isMade(plant, 'callForHeat')).toBe(false);
  });

  it('hands reset and emergency stop on in the same step', () => {
    const plant = createIdealPlant(dairyField());
    plant.field.panel.resetPressed = true;
    plant.field.panel.emergencyStopPressed = true;
    runPlant(plant, 0, rest, 0.01);
    expect([isMade(plant, 'resetPressed'), isMade(plant, 'emergencyStopClear')]).toEqual([
      true,
      false,
    ]);
  });

  it('resets a tripped limit only once the pressure is back', () => {
    const plant = createIdealPlant(dairyField());
    const { panel } = plant.field;
    plant.readings.vesselPa = 1.4e6;
    runPlant(plant, 0, rest, 2);
    expect(isMade(plant, 'highLimitMade')).toBe(false);
    panel.limitResetPressed = true;
    runPlant(plant, 0, rest, 1);
    panel.limitResetPressed = false;
    plant.readings.vesselPa = 1.2e6;
    runPlant(plant, 0, rest, 2);
    expect(isMade(plant, 'highLimitMade')).toBe(false);
    panel.limitResetPressed = true;
    runPlant(plant, 0, rest, 0.5);
    expect(isMade(plant, 'highLimitMade')).toBe(true);
  });

  it('sets the firing rate by hand, and air and fuel follow the curve', () => {
    const plant = createIdealPlant(dairyField());
    plant.field.panel.firingMode = 'hand';
    plant.field.panel.handRate = 0.6;
    runPlant(plant, safetyRelay | fan, lowFire, 40);
    runPlant(plant, safetyRelay | fan, curve, 60);
    const { outputs } = plant.field;
    expect(outputs.firingRate).toBeCloseTo(0.6, 9);
    expect(outputs.damperTargetDeg).toBeCloseTo(53.5, 6);
    // Servos within their deadband and backlash, the fan within 1 rpm.
    expect(Math.abs(outputs.damperBladeDeg - 53.5)).toBeLessThan(0.5);
    expect(Math.abs(outputs.fuelValveBladeDeg - 50)).toBeLessThan(0.5);
    expect(Math.abs(outputs.fanRpm - 1310)).toBeLessThan(1);
    expect(isMade(plant, 'positionsOnCurve')).toBe(true);
  });
});

describe('a plant without a device', () => {
  it('reads it as always proved', () => {
    const parameters = dairyField();
    const { field } = parameters;
    const bare = wired({
      ...parameters,
      field: {
        ...field,
        relays: field.relays.filter(
          ({ terminal }) => terminal !== 'ventValve' && terminal !== 'pilotValve',
        ),
        servos: [],
        drives: [],
        transmitters: [],
        switches: [],
        interspaceComparators: [],
        closedProofs: [],
        waterCutOffs: [],
        airChangeCounters: [],
      },
    });
    const plant = createIdealPlant(bare);
    runPlant(plant, safetyRelay, rest, 1);
    const absent = ALL_INPUTS & ~plant.word;
    const names = Object.entries(INPUT_BITS).filter(([, bit]) => (absent & bit) !== 0);
    expect(names.map(([name]) => name)).toEqual(['callForHeat', 'resetPressed', 'flame']);
  });

  it('with a fixed-speed fan has its speed proofs always, and its fan on the mains', () => {
    const parameters = dairyField();
    const { inertiaKgM2 } = parameters.field.drives[0] as { inertiaKgM2: number };
    const plant = createIdealPlant(
      wired({
        ...parameters,
        field: {
          ...parameters.field,
          drives: [
            fillDefaults(fixedSpeedParameters, {
              id: 'fan',
              kind: 'fixed speed',
              ratedTorqueNm: 81.4,
              ratedCurrentA: 24,
              magnetisingCurrentA: 9,
              inertiaKgM2,
            }),
          ],
        },
      }),
    );
    expect(isMade(plant, 'fanAtPurgeSpeed')).toBe(true);
    runPlant(plant, safetyRelay | fan, lightOff, 30);
    expect(plant.field.outputs.fanRpm).toBeGreaterThan(1750);
    expect([isMade(plant, 'fanAtLightOffSpeed'), isMade(plant, 'speedOnCurve')]).toEqual([
      true,
      true,
    ]);
  });

  it('with one servo for air and fuel moves both by it', () => {
    const parameters = dairyField();
    const one = fillDefaults(servoParameters, {
      id: 'servo',
      moves: 'damper and fuel valve',
      slewDegS: 3,
    });
    const plant = createIdealPlant(
      wired({
        ...parameters,
        field: { ...parameters.field, servos: [one] },
      }),
    );
    runPlant(plant, safetyRelay | fan, purge, 40);
    const { outputs } = plant.field;
    expect(outputs.fuelValveBladeDeg).toBe(outputs.damperBladeDeg);
    expect(outputs.damperBladeDeg).toBeGreaterThan(89);
    expect([isMade(plant, 'damperAtPurge'), isMade(plant, 'fuelValveAtLightOff')]).toEqual([
      true,
      true,
    ]);
  });
});

describe('faults in mid-run', () => {
  it('leave every state as it was when a parameter changes and comes back', () => {
    const untouched = createIdealPlant(dairyField());
    const touched = createIdealPlant(dairyField());
    for (let i = 0; i < 40; i++) {
      for (const plant of [untouched, touched]) runPlant(plant, safetyRelay | fan, purge, 1);
      prepareField(touched.field);
      expect(touched.word).toBe(untouched.word);
      expect(touched.field.outputs).toEqual(untouched.field.outputs);
    }
  });

  it('wake a servo at rest: an offset moves the blade, a slip shows at it', () => {
    const plant = createIdealPlant(dairyField());
    runPlant(plant, safetyRelay | fan, lightOff, 60);
    const { outputs } = plant.field;
    const before = outputs.damperBladeDeg;
    const servo = plant.field.parameters.field.servos[0] as ServoParameters;
    servo.slipDeg = -5;
    prepareField(plant.field);
    runPlant(plant, safetyRelay | fan, lightOff, 0.01);
    expect(outputs.damperBladeDeg).toBeCloseTo(before - 5, 9);
    servo.slipDeg = 0;
    servo.feedbackOffsetDeg = 10;
    prepareField(plant.field);
    runPlant(plant, safetyRelay | fan, lightOff, 10);
    // Within the deadband of the servo and its backlash.
    expect(Math.abs(outputs.damperBladeDeg - (before - 10))).toBeLessThan(0.5);
  });

  it('show a jammed damper as a purge position that never proves', () => {
    const parameters = dairyField();
    (parameters.field.servos[0] as { jamMaxDeg: number }).jamMaxDeg = 65;
    const plant = createIdealPlant(parameters);
    runPlant(plant, safetyRelay | fan, purge, 120);
    expect(isMade(plant, 'fanAtPurgeSpeed')).toBe(true);
    expect(isMade(plant, 'damperAtPurge')).toBe(false);
    expect(plant.field.outputs.damperBladeDeg).toBe(65);
  });

  it('show a slipped damper nowhere but at the blade', () => {
    const run = (slipDeg: number) => {
      const parameters = dairyField();
      (parameters.field.servos[0] as { slipDeg: number }).slipDeg = slipDeg;
      const plant = createIdealPlant(parameters);
      runPlant(plant, safetyRelay | fan, purge, 60);
      const { damperBladeDeg, ...rest } = plant.field.outputs;
      return { damperBladeDeg, word: plant.word, feedback: rest.damperFeedbackDeg };
    };
    const sound = run(0);
    const slipped = run(-30);
    expect(slipped.feedback).toBe(sound.feedback);
    expect(slipped.word).toBe(sound.word);
    expect(sound.damperBladeDeg - slipped.damperBladeDeg).toBeCloseTo(30, 6);
  });
});

describe('tables and issues', () => {
  it('have a table for every section, and a kind for every choice of tables', () => {
    for (const sections of [FIELD_SECTIONS, CONTROL_SECTIONS]) {
      for (const { tables } of Object.values(sections)) {
        expect(tables.length).toBeGreaterThan(0);
        if (tables.length > 1) for (const table of tables) expect(table).toHaveProperty('kind');
      }
    }
  });

  it('find nothing wrong with a healthy plant', () => {
    expect(findFieldIssues(dairyField())).toEqual([]);
  });

  it.each<[string, (p: FieldParameters) => void]>([
    ['duplicate id', ({ field }) => rename(field.servos, 1, 'damper')],
    [
      'two relays on one terminal',
      ({ field }) => Object.assign(field.relays[0] as object, { terminal: 'spark' }),
    ],
    [
      'two devices move one thing',
      ({ field }) => Object.assign(field.servos[1] as object, { moves: 'damper' }),
    ],
    [
      'unknown sensor',
      ({ field }) => Object.assign(field.flameRelays[0] as object, { sensor: 'nobody' }),
    ],
    [
      'make and break points crossed',
      ({ field }) => Object.assign(field.switches[0] as object, { breakPa: 60 }),
    ],
    ['curve lengths differ', ({ control }) => void control.curve.fanRpm.pop()],
    ['curve rates do not rise', ({ control }) => Object.assign(control.curve.rates, { 2: 0.4 })],
    ['band upside down', ({ field }) => Object.assign(field.supply, { highVolts: 90 })],
    [
      'magnetising above rated current',
      ({ field }) => Object.assign(field.drives[0] as object, { magnetisingCurrentA: 30 }),
    ],
  ])('name it when there is a %s', (code, spoil) => {
    const parameters = dairyField();
    spoil(parameters);
    expect(findFieldIssues(parameters).map((issue) => issue.code)).toContain(code);
  });

  it('refuse a flame relay without its sensor', () => {
    const parameters = dairyField();
    Object.assign(parameters.field.flameRelays[0] as object, { sensor: 'nobody' });
    expect(() => createField(parameters, 1)).toThrow(RangeError);
  });

  it('accept every kind of flame sensor', () => {
    const field = createField(
      dairyField(fillDefaults(irSensorParameters, { id: 'eye', kind: 'ir' })),
      1,
    );
    expect(settleField(field, createReadings()) & INPUT_BITS.flame).toBe(0);
  });
});

function rename(devices: readonly { id: string }[], index: number, id: string): void {
  (devices[index] as { id: string }).id = id;
}

function setFuse({ wiring }: FieldParameters, condition: 'sound' | 'blown'): void {
  for (const fuse of wiring.fuses) fuse.condition = condition;
}
