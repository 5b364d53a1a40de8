import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { damperLook } from '../../../src/view/schematic/damper-view.ts';
import { fanLook } from '../../../src/view/schematic/fan-view.ts';
import { flamePixels } from '../../../src/view/schematic/flame-pixels.ts';
import { flameLook, sway } from '../../../src/view/schematic/flame-view.ts';
import { gasDots, stackHaze, wallGlow } from '../../../src/view/schematic/furnace-view.ts';
import { FILL_STEPS, pipeLook } from '../../../src/view/schematic/pipe-view.ts';
import { valveLook, valveWord } from '../../../src/view/schematic/valve-view.ts';
import {
  glassShare,
  shellPoints,
  shellTopAt,
  thermometerShare,
  waterPoints,
  waterShare,
} from '../../../src/view/schematic/vessel-view.ts';

describe('a valve', () => {
  it.each([
    [0, 'shut', 0],
    [0.01, 'shut', 0],
    [0.5, 'moving', 0.5],
    [1, 'open', 1],
    [1.3, 'open', 1],
    [-0.2, 'shut', 0],
  ])('at a stem of %f is %s', (opening, state, fill) => {
    expect(valveLook(opening)).toMatchObject({ state, fill });
  });

  it('lifts its stem further the further it opens', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (opening) => {
        const lower = valveLook(opening * 0.5);
        const higher = valveLook(opening);
        expect(higher.stemPx).toBeGreaterThanOrEqual(lower.stemPx);
      }),
      { seed: 21 },
    );
  });

  it('is called not proved only when it is shut and its proof is missing', () => {
    expect(valveWord('shut', 'not proved')).toBe('view.valve.not-proved');
    expect(valveWord('shut', 'no proof')).toBe('view.valve.shut');
    expect(valveWord('open', 'not proved')).toBe('view.valve.open');
  });
});

describe('a pipe', () => {
  it('without gas in it is grey, at operating pressure nearly full of colour', () => {
    expect(pipeLook('gas', false, 0, 0).fillStep).toBe(0);
    expect(pipeLook('gas', false, 0, 10000).fillStep).toBeGreaterThan(FILL_STEPS * 0.85);
  });

  it('shows no marks in a leak of a healthy seat', () => {
    expect(pipeLook('gas', false, 3e-8, 10000)).toMatchObject({ markSpeedPxS: 0, markAlpha: 0 });
  });

  it('moves its marks with the flow, and against the points when the flow is back', () => {
    const slow = pipeLook('gas', false, 0.01, 5000).markSpeedPxS;
    const fast = pipeLook('gas', false, 0.1, 5000).markSpeedPxS;
    expect(fast).toBeGreaterThan(slow);
    expect(pipeLook('gas', false, -0.1, 5000).markSpeedPxS).toBe(-fast);
  });

  it('under suction is as grey as an empty one', () => {
    expect(pipeLook('gas', false, 0, -500).fillStep).toBe(0);
  });

  it('without a pressure reading takes its colour from its flow', () => {
    expect(pipeLook('air', false, 0, Number.NaN).fillStep).toBe(0);
    expect(pipeLook('air', false, 2.4, Number.NaN).fillStep).toBeGreaterThan(FILL_STEPS * 0.85);
  });
});

describe('a damper', () => {
  it('lies across the duct when shut and along it when open', () => {
    expect(damperLook(0, 0).bladeRad).toBeCloseTo(-Math.PI / 2, 9);
    expect(damperLook(90, 90).bladeRad).toBeCloseTo(0, 9);
  });

  it('shows a slipped shaft: the blade by its own angle, the hand by what is fed back', () => {
    const look = damperLook(60, 90);
    expect(look.armRad).toBeCloseTo(0, 9);
    expect(look.bladeRad).toBeCloseTo(-Math.PI / 6, 9);
  });
});

describe('a fan', () => {
  it('stands still at rest and turns backwards when it runs backwards', () => {
    expect(fanLook(0)).toEqual({ turnRadS: 0, blur: 0 });
    expect(fanLook(-400).turnRadS).toBeLessThan(0);
    expect(fanLook(-400).blur).toBe(0);
  });
});

describe('a flame', () => {
  it('is not drawn where there is none', () => {
    expect(flameLook(0, 0).shown).toBe(false);
  });

  it('grows with its intensity', () => {
    expect(flameLook(0.9, 0).length).toBeGreaterThan(flameLook(0.2, 0).length);
    expect(flameLook(0.9, 0).girth).toBeGreaterThan(flameLook(0.2, 0).girth);
  });

  it('that lifts leaves the head: foot gone, body away from it', () => {
    const seated = flameLook(0.8, 0);
    const lifted = flameLook(0.8, 1);
    expect(seated.offset).toBe(0);
    expect(lifted.offset).toBeGreaterThan(0.1);
    expect([seated.footAlpha, lifted.footAlpha]).toEqual([1, 0]);
  });

  it('breathes within bounds, and never faster than three times a second', () => {
    let crossings = 0;
    let before = sway(0, 1);
    for (let t = 0.01; t <= 60; t += 0.01) {
      const now = sway(t, 1);
      expect(Math.abs(now)).toBeLessThanOrEqual(1);
      if (before < 0 !== now < 0) crossings += 1;
      before = now;
    }
    expect(crossings / 2 / 60).toBeLessThan(3);
  });

  it('is painted clear at all edges of its picture', () => {
    for (const part of ['body', 'foot'] as const) {
      const { width, height, data } = flamePixels(part, 64, 32);
      const alpha = (x: number, y: number): number => data[(y * width + x) * 4 + 3];
      for (let x = 0; x < width; x += 1) {
        expect(alpha(x, 0) + alpha(x, height - 1)).toBeLessThan(24);
      }
      for (let y = 0; y < height; y += 1) expect(alpha(width - 1, y)).toBeLessThan(8);
    }
  });
});

describe('a furnace', () => {
  it('glows from cold to hot and no further', () => {
    expect([wallGlow(293), wallGlow(1500), wallGlow(3000)]).toEqual([0, 1, 1]);
  });

  it('has no dots of gas in clean air and full ones at the flammability limit', () => {
    expect(gasDots(0)).toBe(0);
    expect(gasDots(1)).toBe(1);
    expect(gasDots(0.4)).toBeGreaterThan(gasDots(0.1));
  });

  it('lets no haze out without flow', () => {
    expect(stackHaze(0, 500)).toBe(0);
    expect(stackHaze(1, 450)).toBeGreaterThan(stackHaze(1, 300));
  });
});

describe('a vessel', () => {
  const shell = { x: 100, y: 50, width: 200, height: 90 };

  it('has water to its level and never runs over', () => {
    expect(waterShare(0.1, 'water-tube')).toBeGreaterThan(waterShare(0, 'water-tube'));
    expect(waterShare(5, 'water-tube')).toBeLessThan(1);
    expect(waterShare(-5, 'water-tube')).toBeGreaterThan(0);
    expect(waterShare(-5, 'hot water')).toBe(1);
  });

  it('shows the same level in a glass that spans only a part of the shell', () => {
    const glass = { x: 270, y: 56, width: 14, height: 40 };
    const share = waterShare(0.05, 'fire-tube');
    const surface = shell.y + shell.height * (1 - share);
    const column = glass.y + glass.height * (1 - glassShare(share, shell, glass));
    expect(column).toBeCloseTo(surface, 9);
    expect(glassShare(0, shell, glass)).toBeGreaterThan(0);
  });

  it('of the fire-tube kind has its tubes under water at normal level', () => {
    expect(waterShare(0, 'fire-tube')).toBeGreaterThan(waterShare(0, 'water-tube'));
  });

  it('of hot water shows its temperature on a scale of 0 to 120 °C', () => {
    expect([273.15, 333.15, 393.15, 500].map(thermometerShare)).toEqual([0, 0.5, 1, 1]);
  });

  it('has its outlet where its shell is, also off the middle', () => {
    const outline = shellPoints(shell, 'water-tube');
    for (const x of [130, 160, 200, 260]) {
      const top = shellTopAt(shell, 'water-tube', x);
      const near = outline.filter((point) => point.y < 95 && Math.abs(point.x - x) < 6);
      expect(near.some((point) => Math.abs(point.y - top) < 5)).toBe(true);
    }
  });

  it('keeps its water inside the shell and below the surface', () => {
    const outline = shellPoints(shell, 'water-tube');
    const surface = 95;
    const water = waterPoints(outline, surface);
    expect(water.length).toBeGreaterThan(10);
    for (const { x, y } of water) {
      expect(y).toBeGreaterThanOrEqual(surface - 1e-9);
      expect(y).toBeLessThanOrEqual(shell.y + shell.height + 1e-9);
      expect(x).toBeGreaterThanOrEqual(shell.x - 1e-9);
      expect(x).toBeLessThanOrEqual(shell.x + shell.width + 1e-9);
    }
  });
});
