import type { LookWord, Run, TimedAction } from '../../engine/index.ts';

/** Switches that somebody may have left wrong, by the word that an eye has for it, and their parts. */
const SWITCHES: Readonly<Partial<Record<LookWord, string>>> = {
  'look.panel.hand': 'firing-rate selector',
  'look.panel.low-fire': 'firing-rate selector',
  'look.panel.second-setpoint': 'second setpoint',
  'look.panel.emergency-stop-in': 'emergency stop',
  'look.panel.isolator-off': 'mains isolator',
};
const REMOTE_ENABLE = 'remote enable';
const COCK = 'manual gas cock';
const HIGH_LIMIT = 'high-limit';

/** What stands as nobody would leave it on purpose: parts, and cocks by their ids. */
export interface LeftWrong {
  readonly parts: ReadonlySet<string>;
  readonly cocks: ReadonlySet<string>;
}

/** @param log what was done until now */
export function leftWrong(run: Run, log: readonly TimedAction[]): LeftWrong {
  const words = run.look('panel switches')?.words ?? [];
  const remote = log.filter(({ type }) => type === 'remote-enable').at(-1);
  const parts = new Set(words.flatMap((word) => SWITCHES[word] ?? []));
  if (remote?.type === 'remote-enable' && !remote.on) parts.add(REMOTE_ENABLE);
  const stands = new Map(run.bench().cocks.map(({ id, opening }) => [id, opening]));
  const cocks = run.setup.plant.gasTrain.edges.flatMap((edge) =>
    edge.kind === 'cock' && (stands.get(edge.id) ?? 0) < edge.opening ? [edge.id] : [],
  );
  return { parts, cocks: new Set(cocks) };
}

/** The part that an act of hands puts right, where it had been left wrong; null for any other act. */
export function putRight(action: TimedAction, left: LeftWrong, run: Run): string | null {
  const ofPart = (part: string, isRight: boolean) =>
    isRight && left.parts.has(part) ? part : null;
  switch (action.type) {
    case 'firing':
      return ofPart('firing-rate selector', action.mode === 'automatic');
    case 'second-setpoint':
      return ofPart('second setpoint', !action.on);
    case 'emergency-stop':
      return ofPart('emergency stop', !action.pressed);
    case 'supply':
      return ofPart('mains isolator', action.on);
    case 'remote-enable':
      return ofPart(REMOTE_ENABLE, action.on);
    case 'turn-cock':
      return action.opening > 0 && left.cocks.has(action.cock) ? COCK : null;
    case 'reset-limits':
      return action.pressed ? trippedLimit(run) : null;
    default:
      return null;
  }
}

/** What has been put right is so from then on. */
export function withoutRighted(left: LeftWrong, action: TimedAction, part: string): LeftWrong {
  const cock = action.type === 'turn-cock' ? action.cock : '';
  return {
    parts: new Set([...left.parts].filter((one) => one !== part)),
    cocks: new Set([...left.cocks].filter((one) => one !== cock)),
  };
}

/** A button that stands out is pressed in. */
function trippedLimit(run: Run): string | null {
  const buttons = Object.entries(run.look('limit buttons')?.values ?? {});
  const [id] = buttons.find(([, isOut]) => isOut === 1) ?? [];
  if (id === undefined) return null;
  return id === HIGH_LIMIT ? 'high limit' : 'second low-water cut-off';
}
