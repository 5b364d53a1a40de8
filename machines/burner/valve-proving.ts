import type { Condition } from './condition.ts';
import { asStep, type Drive } from './meta.ts';
import { burnerSetup } from './setup.ts';
import { lockOut } from './transitions.ts';

/** Where the proving stands in the sequence: what it drives besides the valves follows from that. */
export interface ProvingPlace {
  readonly when: Condition;
  readonly drives: readonly Drive[];
  readonly target: 'rest' | 'light-off';
}

/**
 * Valve proving: empties, watches, fills and watches the space between the main valves.
 *
 * A child chart of its own, embedded as a compound state rather than invoked as an actor: the
 * whole burner then stays one pure transition function, which replay and exploration rest on.
 *
 * The opening times are fixed and judged at their end: left at first sight of an empty (or full)
 * space, the hold would begin at the edge of its limit and a sound valve could fail it.
 */
export function valveProving({ when, drives, target }: ProvingPlace) {
  const common = {
    when,
    target,
    watch: 'proving',
  } as const;
  return burnerSetup.createStateConfig({
    initial: 'empty',
    states: {
      empty: {
        ...asStep({
          ...common,
          step: 'valve proving: empty',
          phase: 'empty',
          waitsFor: [{ input: 'interspaceEmpty', wanted: true }],
          drives: [
            ...drives,
            { command: 'ventValve', when: { vent: ['proving', 'normally open'] } },
            { command: 'downstreamValve', when: { vent: ['none'] } },
          ],
          lasts: 'vpEmptyS',
          limit: 'vpEmptyS',
          failsAs: [{ cause: 'interspace did not empty' }],
          rules: ['SQ-7', 'SQ-49', 'SQ-50'],
        }),
        after: {
          vpEmptyS: [
            { guard: 'interspaceEmpty', target: 'holdEmpty', meta: { rule: 'SQ-7' } },
            lockOut('interspace did not empty', 'SQ-7'),
          ],
        },
      },
      holdEmpty: {
        ...asStep({
          ...common,
          step: 'valve proving: hold empty',
          phase: 'hold empty',
          waitsFor: [{ input: 'interspaceEmpty', wanted: true }],
          drives,
          lasts: 'vpHoldEmptyS',
          limit: 'vpHoldEmptyS',
          failsAs: [{ cause: 'upstream valve passes' }],
          rules: ['SQ-8'],
        }),
        always: {
          guard: 'interspaceNotEmpty',
          ...lockOut('upstream valve passes', 'SQ-8'),
        },
        after: { vpHoldEmptyS: { target: 'fill', meta: { rule: 'SQ-8' } } },
      },
      fill: {
        ...asStep({
          ...common,
          step: 'valve proving: fill',
          phase: 'fill',
          waitsFor: [{ input: 'interspaceFull', wanted: true }],
          drives: [...drives, { command: 'upstreamValve' }],
          lasts: 'vpFillS',
          limit: 'vpFillS',
          failsAs: [{ cause: 'interspace did not fill' }],
          rules: ['SQ-9'],
        }),
        after: {
          vpFillS: [
            { guard: 'interspaceFull', target: 'holdFull', meta: { rule: 'SQ-9' } },
            lockOut('interspace did not fill', 'SQ-9'),
          ],
        },
      },
      holdFull: {
        ...asStep({
          ...common,
          step: 'valve proving: hold full',
          phase: 'hold full',
          waitsFor: [{ input: 'interspaceFull', wanted: true }],
          drives,
          lasts: 'vpHoldFullS',
          limit: 'vpHoldFullS',
          failsAs: [{ cause: 'downstream or vent valve passes' }],
          rules: ['SQ-10'],
        }),
        always: {
          guard: 'interspaceNotFull',
          ...lockOut('downstream or vent valve passes', 'SQ-10'),
        },
        after: {
          vpHoldFullS: { target: 'proved', actions: 'keepValvesProved', meta: { rule: 'SQ-10' } },
        },
      },
      proved: { type: 'final' },
    },
  });
}

export const provingBeforeStart: ProvingPlace = {
  when: { valveProving: ['before start', 'after run-down'] },
  drives: [{ command: 'safetyRelay' }],
  target: 'rest',
};

/** The fan runs on, so that what the interspace lets into the furnace is swept out. */
export const provingAfterRunDown: ProvingPlace = {
  when: { valveProving: ['after run-down'] },
  drives: [{ command: 'safetyRelay' }, { command: 'fan' }],
  target: 'light-off',
};
