import { describe, expect, it } from 'vitest';
import { createClosedProof, stepClosedProof } from '../../src/field/closed-proof.ts';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  type ClosedProofParameters,
  closedProofParameters,
  supplyParameters,
  type WaterCutOffParameters,
  waterCutOffParameters,
} from '../../src/field/index.ts';
import { createSupply, feedSupply, prepareSupply, watchSupply } from '../../src/field/supply.ts';
import { createWaterCutOff, stepWaterCutOff } from '../../src/field/water-cut-off.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;

describe('proof of closure', () => {
  const at = (stem: number, given: Partial<ClosedProofParameters> = {}) => {
    const proof = createClosedProof(
      fillDefaults(closedProofParameters, { id: 'closed', valve: 'upstream valve', ...given }),
      createContactBoard(),
    );
    stepClosedProof(proof, stem, STEP_S);
    return proof.snap.contact.made;
  };

  it('makes only in the over-travel, after the seat has sealed', () => {
    expect(at(0.02)).toBe(false);
    expect(at(0.013)).toBe(false);
    expect(at(0.011)).toBe(true);
    expect(at(0)).toBe(true);
  });

  it('out of adjustment shows shut while the seat still passes, or never shows shut', () => {
    expect(at(0.1, { adjustment: 8 })).toBe(true);
    expect(at(0, { adjustment: -0.5 })).toBe(false);
  });

  it('stuck made or stuck open tells nothing of the stem', () => {
    expect(at(1, { contact: 'welded' })).toBe(true);
    expect(at(0, { contact: 'open' })).toBe(false);
  });
});

describe('water cut-offs', () => {
  const cutOff = (given: Partial<WaterCutOffParameters>) =>
    createWaterCutOff(
      fillDefaults(waterCutOffParameters, {
        id: 'cut-off',
        stands: 'first',
        breakM: -0.1,
        makeM: -0.07,
        ...given,
      }),
      createContactBoard(),
    );
  const hold = (c: ReturnType<typeof cutOff>, levelM: number, seconds: number, reset = false) => {
    for (let i = 0; i < seconds / STEP_S; i++) stepWaterCutOff(c, levelM, reset, STEP_S);
    return c.snap.contact.made;
  };

  it('ride out a wave shorter than their dwell', () => {
    const c = cutOff({});
    hold(c, 0, 5);
    expect(hold(c, -0.2, 1.9)).toBe(true);
    expect(hold(c, 0, 0.1)).toBe(true);
    expect(hold(c, -0.2, 2.1)).toBe(false);
  });

  it('the first clears itself when the water is back', () => {
    const c = cutOff({});
    hold(c, -0.2, 5);
    expect(hold(c, -0.08, 5)).toBe(false);
    expect(hold(c, 0, 5)).toBe(true);
  });

  it('the second stays out until it is reset with the water back', () => {
    const c = cutOff({ stands: 'second', manualReset: true });
    hold(c, 0, 5);
    hold(c, -0.2, 5);
    expect(hold(c, -0.2, 5, true)).toBe(false);
    expect(hold(c, 0, 5)).toBe(false);
    expect(hold(c, 0, 0.01, true)).toBe(true);
  });

  it('scale on the rod hides water that is there, up to what the relay can see through', () => {
    expect(hold(cutOff({ scaleOhm: 20_000 }), 0, 10)).toBe(true);
    expect(hold(cutOff({ scaleOhm: 30_000 }), 0, 10)).toBe(false);
  });

  it('a wet film over its insulator shows water that is gone', () => {
    expect(hold(cutOff({ bridgeOhm: 20_000 }), -0.5, 10)).toBe(true);
    expect(hold(cutOff({ bridgeOhm: 40_000 }), -0.5, 10)).toBe(false);
  });

  it('scale and film together are judged by both paths side by side', () => {
    // 65 kΩ beside 50 kΩ are 28.3 kΩ, within the 30 kΩ of the relay; each alone is not.
    expect(hold(cutOff({ scaleOhm: 60_000, bridgeOhm: 50_000 }), 0, 10)).toBe(true);
    expect(hold(cutOff({ scaleOhm: 60_000, bridgeOhm: 50_000 }), -0.5, 10)).toBe(false);
    expect(hold(cutOff({ scaleOhm: 60_000 }), 0, 10)).toBe(false);
  });

  it('feels water held up around its rod by a blocked chamber', () => {
    const c = cutOff({ offsetM: 0.3 });
    expect(hold(c, -0.3, 10)).toBe(true);
  });
});

describe('the monitor of the supply', () => {
  const supply = () =>
    createSupply(
      fillDefaults(supplyParameters, {
        mainsVolts: 120,
        mainsHz: 60,
        nominalVolts: 120,
        lowVolts: 102,
        highVolts: 132,
        lowHz: 57,
        highHz: 63,
      }),
      createContactBoard(),
    );
  type Supply = ReturnType<typeof supply>;
  const hold = (s: Supply, seconds: number, isolatorOn = true) => {
    for (let i = 0; i < seconds / STEP_S; i++) {
      feedSupply(s, isolatorOn ? s.lineVolts : 0);
      watchSupply(s, STEP_S);
    }
    return s.inBand.made;
  };
  const turn = (s: Supply, change: Partial<Supply['parameters']>) => {
    Object.assign(s.parameters, change);
    prepareSupply(s);
  };

  it('is in band when healthy, after its dwell', () => {
    const s = supply();
    expect(hold(s, 0.4)).toBe(false);
    expect(hold(s, 0.2)).toBe(true);
  });

  it.each([
    ['volts low', { mainsVolts: 100 }],
    ['volts high', { mainsVolts: 135 }],
    ['frequency low', { mainsHz: 56 }],
    ['frequency high', { mainsHz: 64 }],
  ])(
    'leaves its band with %s, after its dwell, and comes back with the supply',
    (_what, change) => {
      const s = supply();
      hold(s, 1);
      turn(s, change);
      expect(hold(s, 0.4)).toBe(true);
      expect(hold(s, 0.2)).toBe(false);
      turn(s, { mainsVolts: 120, mainsHz: 60 });
      expect(hold(s, 1)).toBe(true);
    },
  );

  it('does not chatter on volts just inside the edge of its band', () => {
    const s = supply();
    hold(s, 1);
    turn(s, { mainsVolts: 103 });
    expect(hold(s, 5)).toBe(true);
    turn(s, { mainsVolts: 100 });
    hold(s, 1);
    turn(s, { mainsVolts: 103 });
    expect(hold(s, 5)).toBe(false);
  });

  it('is lost behind an open isolator', () => {
    const s = supply();
    hold(s, 1);
    expect(hold(s, 1, false)).toBe(false);
  });
});
