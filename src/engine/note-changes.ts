/** Turns changed words into events: proofs made and lost, devices told to do something else. */
import { COMMANDS, INPUTS, TARGETS, type TargetName } from '../../machines/burner/index.ts';
import { note, type RunState } from './run-state.ts';
import { DEVICE_WORDS, PROOF_WORDS } from './words.ts';

export function noteInputs(run: RunState, t: number, before: number, after: number): void {
  const changed = before ^ after;
  for (let bit = 0; bit < INPUTS.length; bit++) {
    if ((changed & (1 << bit)) === 0) continue;
    const what = PROOF_WORDS[INPUTS[bit] as (typeof INPUTS)[number]];
    note(run, { t, type: (after & (1 << bit)) !== 0 ? 'proved' : 'lost', what });
  }
}

export function noteCommands(
  run: RunState,
  t: number,
  before: number,
  after: number,
  targetBefore: number,
  targetAfter: number,
): void {
  const changed = before ^ after;
  for (let bit = 0; bit < COMMANDS.length; bit++) {
    if ((changed & (1 << bit)) === 0) continue;
    const words = DEVICE_WORDS[COMMANDS[bit] as (typeof COMMANDS)[number]];
    const to = (after & (1 << bit)) !== 0 ? words.on : words.off;
    note(run, { t, type: 'command', device: words.device, to });
  }
  if (targetBefore !== targetAfter) {
    note(run, { t, type: 'command', device: 'positions', to: TARGETS[targetAfter] as TargetName });
  }
}
