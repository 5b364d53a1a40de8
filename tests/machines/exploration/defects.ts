import { type AnyStateMachine, createMachine } from 'xstate';
import { burnerMachine } from '../../../machines/index.ts';

/** A burner made wrong on purpose: the judge must refuse it for the invariant that it breaks. */
export interface Defect {
  readonly name: string;
  readonly breaks: string;
  readonly machine: () => AnyStateMachine;
}

// A chart as loosely typed data: a defect may be anything.
// biome-ignore lint/suspicious/noExplicitAny: see above
type Chart = any;

export const DEFECTS: readonly Defect[] = [
  defect('main valves driven in purge', 'IN-1', (chart) => {
    const { timing } = starting(chart).prePurge.states.purge.states;
    timing.meta.drives.push({ command: 'upstreamValve' }, { command: 'downstreamValve' });
  }),
  defect('spark left on in main proving', 'IN-2', (chart) => {
    starting(chart).lightOff.states.mainProving.meta.drives.push({ command: 'spark' });
  }),
  defect('a drive to purge that leads past the purge', 'IN-3', (chart) => {
    starting(chart).prePurge.states.drive.states.steady.after.purgeDwellS.target = '#lightOff';
  }),
  defect('a purge that does not wait for its air changes', 'IN-3', (chart) => {
    starting(chart).prePurge.states.purge.states.counting.always.guard = 'purgeProved';
  }),
  defect('valve proving that ends when empty', 'IN-3', (chart) => {
    starting(chart).proving.states.empty.after.vpEmptyS = { target: '#prePurge' };
  }),
  defect('a flame that may be lost unnoticed', 'IN-4', (chart) => {
    delete chart.states.flame.states.lit.always;
  }),
  defect('a trial that begins again', 'IN-4', (chart) => {
    starting(chart).lightOff.states.mainTrial.after.mainTrialS[1] = {
      target: 'mainTrial',
      reenter: true,
    };
  }),
  defect('a vent open while the interspace is filled', 'IN-5', (chart) => {
    starting(chart).proving.states.fill.meta.drives.push({ command: 'ventValve' });
  }),
  defect('a reset that does not look at the cause', 'IN-6', (chart) => {
    chart.states.reset.states.pressed.always[0].guard = 'resetReleased';
  }),
  defect('a lockout that the supply clears', 'IN-6', (chart) => {
    chart.states.sequence.states.lockout.always = { guard: 'supplyOut', target: '#standby' };
  }),
  defect('a blocked standby without a limit', 'IN-7', (chart) => {
    delete chart.states.sequence.states.standby.states.blocked.after;
  }),
  defect('a limit that leads nowhere', 'IN-7', (chart) => {
    delete starting(chart).lightOff.states.drive.after.driveLightOffLimitS.target;
  }),
  defect('a lockout that its step does not name', 'IN-7', (chart) => {
    starting(chart).lightOff.states.mainTrial.after.mainTrialS[1].actions.params.cause =
      'water low';
  }),
];

function defect(name: string, breaks: string, change: (chart: Chart) => void): Defect {
  return {
    name,
    breaks,
    machine: () => {
      const chart = copyOf(burnerMachine.config);
      change(chart);
      return createMachine(chart, burnerMachine.implementations as never) as AnyStateMachine;
    },
  };
}

function starting(chart: Chart): Chart {
  return chart.states.sequence.states.starting.states;
}

function copyOf(part: unknown): Chart {
  if (Array.isArray(part)) return part.map(copyOf);
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, copyOf(value)]));
}
