import { describe, expect, it } from 'vitest';
import {
  COMMANDS,
  type CommandName,
  describePhase,
  describeStep,
  outputsFor,
  PHASES,
  STEPS,
  type StepName,
  type Variant,
  WATCHES,
} from '../../machines/index.ts';
import { SHORT } from './patterns.ts';
import { BAKERY, DAIRY, LAUNDRY, SCHOOL } from './practice.ts';
import { createRig } from './rig.ts';

const VARIANTS: readonly (readonly [string, Variant])[] = [
  ['dairy', DAIRY],
  ['laundry', LAUNDRY],
  ['school', SCHOOL],
  ['bakery', BAKERY],
];
const HOLDS_VENT_SHUT: readonly StepName[] = [
  'valve proving: hold empty',
  'valve proving: fill',
  'valve proving: hold full',
];

function driven(step: StepName, variant: Variant): Set<CommandName> {
  return new Set(describeStep(step, variant)?.drives);
}

describe('what each step drives', () => {
  it.each([
    ['at-rest check', 'safetyRelay'],
    ['valve proving: empty', 'safetyRelay ventValve'],
    ['valve proving: hold empty', 'safetyRelay'],
    ['valve proving: fill', 'safetyRelay upstreamValve'],
    ['valve proving: hold full', 'safetyRelay'],
    ['drive to purge', 'safetyRelay fan'],
    ['purge', 'safetyRelay fan countAir'],
    ['drive to light-off', 'safetyRelay fan'],
    ['spark check', 'safetyRelay fan spark'],
    ['pilot trial', 'safetyRelay fan spark pilotValve'],
    ['pilot proving', 'safetyRelay fan pilotValve'],
    ['main trial', 'safetyRelay fan pilotValve upstreamValve downstreamValve'],
    ['main proving', 'safetyRelay fan upstreamValve downstreamValve'],
    ['low-fire hold', 'safetyRelay fan upstreamValve downstreamValve'],
    ['modulation', 'safetyRelay fan upstreamValve downstreamValve'],
    ['post-purge', 'fan'],
    ['lockout', 'alarm'],
    ['standby', ''],
  ] as [StepName, string][])('[SQ-24] dairy, %s: %s', (step, expected) => {
    expect([...driven(step, DAIRY)].sort()).toEqual(expected.split(' ').filter(Boolean).sort());
  });

  it('[SQ-24] an intermittent pilot burns as long as the main valves are commanded', () => {
    const variant: Variant = { ...DAIRY, ignition: 'intermittent pilot' };
    for (const { meta } of PHASES) {
      const { commands } = outputsFor(meta, variant);
      const main = (commands & (1 << COMMANDS.indexOf('downstreamValve'))) !== 0;
      const pilot = (commands & (1 << COMMANDS.indexOf('pilotValve'))) !== 0;
      if (main) expect([meta.step, pilot]).toEqual([meta.step, true]);
    }
  });
  it('[SQ-23] direct spark has no pilot steps and sparks in the main trial', () => {
    expect(describeStep('pilot trial', SCHOOL)).toBeUndefined();
    expect(describeStep('pilot proving', SCHOOL)).toBeUndefined();
    expect(driven('main trial', SCHOOL).has('spark')).toBe(true);
    expect(driven('main trial', DAIRY).has('spark')).toBe(false);
  });
  it('[SQ-49] a proving vent opens in valve proving: empty and nowhere else', () => {
    const open = STEPS.filter((step) => driven(step, BAKERY).has('ventValve'));
    expect(open).toEqual(['valve proving: empty']);
  });
  it('[SQ-50] a vent that is normally open is shut only by main valves and in the holds', () => {
    const variant: Variant = { ...DAIRY, vent: 'normally open' };
    for (const { meta, index } of PHASES) {
      const { drives } = describePhase(index, variant);
      const main = drives.includes('upstreamValve') || drives.includes('downstreamValve');
      const shut = main || HOLDS_VENT_SHUT.includes(meta.step);
      expect([meta.step, meta.phase, drives.includes('ventValve')]).toEqual([
        meta.step,
        meta.phase,
        !shut,
      ]);
    }
  });
  it('[SQ-7] without a vent the downstream valve empties the interspace', () => {
    expect(driven('valve proving: empty', SCHOOL)).toEqual(
      new Set(['safetyRelay', 'downstreamValve']),
    );
    for (const step of STEPS) expect(driven(step, SCHOOL).has('ventValve')).toBe(false);
  });
});

describe('what is said of a step is what is done', () => {
  it.each(VARIANTS)(
    '%s: commands and target follow the phase through a whole day',
    (_name, variant) => {
      const rig = createRig(variant, SHORT);
      const seen = new Set<number>();
      const compare = (): void => {
        seen.add(rig.burner.phase);
        const { drives, target } = describePhase(rig.burner.phase, variant);
        expect(COMMANDS.filter((command) => rig.commanded(command))).toEqual(
          COMMANDS.filter((command) => drives.includes(command)),
        );
        expect(rig.target()).toBe(target);
      };
      for (const step of ['standby', 'modulation', 'run down', 'standby', 'purge'] as StepName[]) {
        if (step === 'run down') rig.give({ callForHeat: false });
        rig.reach(step);
        compare();
      }
      rig.give({ emergencyStopClear: false });
      compare();
      expect(seen.size).toBeGreaterThan(4);
    },
  );
  it.each(VARIANTS)('%s: a plant that gives what is waited for is started', (_name, variant) => {
    const rig = createRig(variant, SHORT);
    rig.reach('modulation');
    const steps = rig.changes.flatMap((change) => (change.kind === 'step' ? [change.step] : []));
    const expected = STEPS.slice(0, STEPS.indexOf('run down')).filter((step) => {
      if (step.startsWith('valve proving')) return variant.valveProving !== 'none';
      if (step.startsWith('pilot')) return variant.ignition !== 'direct spark';
      return true;
    });
    expect(steps).toEqual(expected);
  });
  it('every phase names a limit or is one that may rest', () => {
    for (const { meta } of PHASES) {
      if (meta.limit === null) expect(['idle', 'modulation', 'lockout']).toContain(meta.phase);
      else expect(SHORT).toHaveProperty(meta.limit);
      expect(WATCHES).toHaveProperty(meta.watch);
      expect(meta.purpose).toBe(`step.${meta.step.replace(/[^a-z]+/g, '-')}`);
    }
  });
  it('every step is described, with its phases in the order of the charts', () => {
    expect(new Set(PHASES.map(({ meta }) => meta.step))).toEqual(new Set(STEPS));
    expect(describeStep('purge', DAIRY)).toMatchObject({
      limits: ['purgeLimitS'],
      waitsFor: [
        { input: 'damperAtPurge', wanted: true },
        { input: 'fanAtPurgeSpeed', wanted: true },
        { input: 'airProved', wanted: true },
        { input: 'airChangesCounted', wanted: true },
      ],
      phases: [
        { name: 'timing', lasts: 'purgeS' },
        { name: 'counting', lasts: null },
      ],
    });
    expect(describeStep('purge', LAUNDRY)?.waitsFor.map(({ input }) => input)).not.toContain(
      'fanAtPurgeSpeed',
    );
  });
});
