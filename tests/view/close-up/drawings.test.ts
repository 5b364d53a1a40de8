import { describe, expect, it } from 'vitest';
import { LOOK_WHATS, type LookReading, type LookWhat } from '../../../src/engine/index.ts';
import { message } from '../../../src/i18n/index.ts';
import { drawLook } from '../../../src/view/close-up/drawings.ts';

type Word = LookReading['words'][number];

function drawn(what: LookWhat, words: readonly string[], values: Record<string, number> = {}) {
  const codes = words.map((word) => `look.${word}` as Word);
  return drawLook({ what, words: codes, values, needsOpening: false }, message);
}

/** Two findings at one place that eyes must be able to tell apart. */
const APART: readonly (readonly [
  LookWhat,
  readonly [readonly string[], Record<string, number>],
  readonly [readonly string[], Record<string, number>],
])[] = [
  ['sight glass', [['flame.none'], {}], [['flame.none', 'flame.tiles-glow'], {}]],
  [
    'sight glass',
    [['flame.seated', 'flame.blue'], { sizeShare: 0.5, liftShare: 0 }],
    [['flame.lifting', 'flame.blue'], { sizeShare: 0.5, liftShare: 0.5 }],
  ],
  [
    'sight glass',
    [['flame.seated', 'flame.blue'], { sizeShare: 0.5 }],
    [['flame.seated', 'flame.yellow'], { sizeShare: 0.5 }],
  ],
  ['pilot flame', [['pilot.none'], {}], [['pilot.burns'], { sizeShare: 0.9 }]],
  [
    'pilot flame',
    [['pilot.burns'], { sizeShare: 0.9 }],
    [['pilot.burns', 'pilot.misses-main-gas'], { sizeShare: 0.9 }],
  ],
  ['spark', [['spark.none'], {}], [['spark.weak'], { brightnessShare: 0.2 }]],
  ['manual cock', [['valve.open'], { cock: 1 }], [['valve.shut'], { cock: 0 }]],
  ['strainer', [['way.clear'], { closedShare: 0 }], [['way.dirty'], { closedShare: 0.5 }]],
  [
    'upstream valve indicator',
    [['valve.shut'], { openShare: 0 }],
    [['valve.part-open'], { openShare: 0.3 }],
  ],
  ['upstream valve proof switch', [['proof.pressed'], {}], [['proof.free'], {}]],
  [
    'fuel valve shaft',
    [['shaft.together'], { servoShaftDeg: 40, bladeDeg: 40 }],
    [['shaft.apart'], { servoShaftDeg: 40, bladeDeg: 10 }],
  ],
  ['gas joints', [['joints.dry'], { inlet: 0 }], [['joints.foam'], { inlet: 1e-6 }]],
  ['damper blade', [['blade.shut'], { bladeDeg: 0 }], [['blade.open'], { bladeDeg: 90 }]],
  ['drive display', [['drive.dark'], {}], [['drive.ready'], { frequencyHz: 0, currentA: 0 }]],
  ['belt', [['belt.tight'], { slackShare: 0 }], [['belt.slack'], { slackShare: 0.08 }]],
  ['fan rotation', [['fan.turns-right'], {}], [['fan.turns-wrong'], {}]],
  ['fan contactor', [['contactor.out'], {}], [['contactor.out', 'contactor.burnt'], {}]],
  ['air switch tube', [['tube.on'], {}], [['tube.off'], {}]],
  ['air switch tube', [['tube.on'], {}], [['tube.on', 'tube.water'], {}]],
  ['electrode', [['electrode.gap-set'], { gapMm: 4 }], [['electrode.gap-wide'], { gapMm: 7 }]],
  ['electrode', [['electrode.gap-set'], { gapMm: 4 }], [['electrode.crack'], { gapMm: 4 }]],
  ['lens', [['lens.clean'], { clearShare: 1 }], [['lens.film'], { clearShare: 0.6 }]],
  ['flame rod', [['rod.clean'], {}], [['rod.touches'], {}]],
  [
    'gauge glass',
    [['glass.level', 'glass.cocks-open'], { levelM: 0 }],
    [['glass.level', 'glass.cock-shut'], { levelM: 0 }],
  ],
  ['gauge glass', [['glass.empty'], { levelM: -0.3 }], [['glass.full'], { levelM: 0.3 }]],
  ['limit buttons', [['limit.in'], { limit: 0 }], [['limit.tripped'], { limit: 1 }]],
  ['fuses', [['fuse.whole'], { fuse: 1 }], [['fuse.broken'], { fuse: 0 }]],
  ['terminal strip', [['strip.in-order'], {}], [['strip.jumper'], { 'L1+33': 1 }]],
  ['terminal strip', [['strip.in-order'], {}], [['strip.wire-out'], { 'airflow:1': 1 }]],
  ['time clock', [['clock.made'], { shownHour: 8 }], [['clock.made'], { shownHour: 11 }]],
];

describe('the close-up of a look', () => {
  it.each(LOOK_WHATS)('at %s is a drawing, whatever was found', (what) => {
    const drawing = drawn(what, [], { 'some-part': 1 });
    expect(drawing).toContain('<');
    expect(drawing).not.toMatch(/NaN|undefined|Infinity/);
  });

  it.each(APART)('at %s tells %j from %j', (what, [one, values], [other, otherValues]) => {
    expect(drawn(what, one, values)).not.toBe(drawn(what, other, otherValues));
  });

  it('shows valve, level and blade where they are, not only at their ends', () => {
    const at = (what: LookWhat, name: string, value: number) => drawn(what, [], { [name]: value });
    for (const [what, name, steps] of [
      ['upstream valve indicator', 'openShare', [0, 0.25, 0.5, 0.75, 1]],
      ['damper blade', 'bladeDeg', [0, 15, 45, 70, 90]],
      ['damper servo pointer', 'pointerDeg', [0, 15, 45, 70, 90]],
      ['gauge glass', 'levelM', [-0.2, -0.1, 0, 0.1, 0.2]],
      ['boiler gauge', 'pressurePa', [0, 1e5, 2e5, 3e5, 3.5e5]],
    ] as const) {
      const drawings = new Set(steps.map((value) => at(what, name, value)));
      expect(drawings.size, what).toBe(steps.length);
    }
  });

  it('puts the names of parts in as text, not as markup', () => {
    expect(drawn('fuses', ['fuse.whole'], { '<script>': 1 })).not.toContain('<script>');
  });
});
