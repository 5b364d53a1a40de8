import { COMMANDS, INPUT_BITS, type Outputs, type StateMeta } from '../../../machines/index.ts';
import { alwaysIs, type Cube } from './cubes.ts';

/**
 * What a bystander remembers, from steps, timers and commands alone: the machine's own memory is
 * not asked, because it is what is being judged.
 */
export interface Monitor {
  /** In this purge, its timer has run out. */
  readonly purgeTimed: boolean;
  /** A purge was completed since rest, and since fuel was last shut. */
  readonly purged: boolean;
  /** Valve proving was completed since fuel was last shut. */
  readonly proved: boolean;
  readonly fuel: boolean;
}
export const START: Monitor = { purgeTimed: false, purged: false, proved: false, fuel: false };

const AT_REST: ReadonlySet<string> = new Set(['standby', 'at-rest check', 'lockout']);

interface Place {
  readonly meta: StateMeta;
  readonly outputs: Outputs;
}
type From = (Place & { readonly monitor: Monitor }) | null;

export function commands(outputs: Outputs, command: (typeof COMMANDS)[number]): boolean {
  return (outputs.commands & (1 << COMMANDS.indexOf(command))) !== 0;
}
/** Gas let through to the burner; the single valve of valve proving is not. */
export function commandsFuel({ meta, outputs }: Place): boolean {
  if (commands(outputs, 'pilotValve')) return true;
  if (meta.step.startsWith('valve proving')) {
    return commands(outputs, 'upstreamValve') && commands(outputs, 'downstreamValve');
  }
  return commands(outputs, 'upstreamValve') || commands(outputs, 'downstreamValve');
}

export function nextMonitor(from: From, event: object | 'inputs', to: Place, cube: Cube): Monitor {
  const before = from?.monitor ?? START;
  const fired = typeof event === 'object' && 'delay' in event ? event.delay : null;
  const fuel = commandsFuel(to);
  const wasPurging = from?.meta.step === 'purge';
  const timed = wasPurging && (before.purgeTimed || fired === 'purgeS');
  const completesPurge =
    timed &&
    to.meta.step === 'drive to light-off' &&
    alwaysIs(cube, INPUT_BITS.airChangesCounted, true);
  const completesProving =
    from?.meta.step === 'valve proving: hold full' &&
    fired === 'vpHoldFullS' &&
    to.meta.step !== 'lockout';
  const fuelShut = before.fuel && !fuel;
  const atRest = AT_REST.has(to.meta.step);
  return {
    purgeTimed: timed && to.meta.step === 'purge',
    purged: (before.purged || completesPurge) && !fuelShut && !atRest,
    proved: (before.proved || completesProving) && !fuelShut,
    fuel,
  };
}
