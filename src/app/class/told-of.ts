import type { ClassNow } from '../../classroom/client/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import type { Told } from '../session/told.ts';

/**
 * Where the one plant has come to, as a session follows it; null before it is there.
 *
 * @param before what was told last; handed back where nothing has changed since
 */
export function toldOf(
  { work, head }: Pick<ClassNow, 'work' | 'head'>,
  before: Told | null = null,
): Told | null {
  if (work === null || head === null) return null;
  // The worker checks each act by the engine's tables.
  const log = work.acts as unknown as readonly TimedAction[];
  const { mode, speed } = head;
  // A head from before the newest work may lie beyond a cut of it.
  const { headS, hash } = head.rev < work.rev ? work : head;
  const isSame =
    before !== null &&
    before.log === log &&
    before.headS === headS &&
    before.hash === hash &&
    before.mode === mode &&
    before.speed === speed;
  return isSame ? before : { log, headS, hash, mode, speed };
}
