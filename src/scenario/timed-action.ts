import type { TimedAction } from '../engine/index.ts';
import type { ScriptedAction } from './action-schema.ts';

export function timedAction(scripted: ScriptedAction): TimedAction {
  const { at, do: type, ...fields } = scripted;
  return { t: at, type, ...fields } as TimedAction;
}
