/** What happens in a start, a stop and a lockout, as it can be put in order. */
import type { StepName } from '../../../../machines/burner/index.ts';
import type { RunEvent } from '../../../engine/index.ts';

export interface Thing {
  readonly id: string;
  /** Step of the sequence in which it comes; null where it may be any. */
  readonly step: StepName | null;
  /** The event that it is. */
  readonly is: (event: RunEvent) => boolean;
  /** Things that go on side by side: of these an item asks for one at most. */
  readonly beside?: string;
  /** Begins the step, is proved within it, or ends by itself. */
  readonly how: 'begins' | 'told' | 'proved' | 'lost' | 'done';
  /** Only after this has come. */
  readonly after?: 'lockout' | 'reset';
}

/** When each thing came, by its id; one that came more than once has its first time. */
export type Timetable = ReadonlyMap<string, number>;

const begins = (id: string, step: StepName, more: Partial<Thing> = {}): Thing => ({
  id,
  step,
  how: 'begins',
  is: (e) => e.type === 'step' && e.step === step,
  ...more,
});
const told = (id: string, step: StepName, device: string, to: string): Thing => ({
  id,
  step,
  how: 'told',
  is: (e) => e.type === 'command' && e.device === device && e.to === to,
});
const proved = (id: string, step: StepName, what: string, beside?: string): Thing => ({
  id,
  step,
  how: 'proved',
  is: (e) => e.type === 'proved' && e.what === what,
  ...(beside === undefined ? {} : { beside }),
});

const TO_PURGE = 'on the way to purge';
const TO_LIGHT_OFF = 'on the way to light-off';
const AFTER_FUEL = 'after the fuel is shut';

/** In no order that counts: the runs say in which order they come. */
export const THINGS: readonly Thing[] = [
  told('relay-picks-up', 'at-rest check', 'safety relay', 'pick up'),
  begins('space-emptied', 'valve proving: empty'),
  begins('empty-watched', 'valve proving: hold empty'),
  begins('space-filled', 'valve proving: fill'),
  begins('full-watched', 'valve proving: hold full'),
  told('fan-starts', 'drive to purge', 'fan', 'run'),
  proved('air-made', 'drive to purge', 'airflow', TO_PURGE),
  proved('purge-speed', 'drive to purge', 'fan at purge speed', TO_PURGE),
  proved('purge-position', 'drive to purge', 'damper at purge', TO_PURGE),
  begins('purge-begins', 'purge'),
  proved('changes-counted', 'purge', 'air changes'),
  begins('to-light-off', 'drive to light-off'),
  proved('light-off-speed', 'drive to light-off', 'fan at light-off speed', TO_LIGHT_OFF),
  proved('light-off-position', 'drive to light-off', 'damper at light-off', TO_LIGHT_OFF),
  told('spark-on', 'spark check', 'spark', 'on'),
  told('pilot-opens', 'pilot trial', 'pilot valve', 'open'),
  proved('pilot-seen', 'pilot trial', 'flame'),
  told('spark-off', 'pilot proving', 'spark', 'off'),
  told('main-opens', 'main trial', 'downstream valve', 'open'),
  proved('main-seen', 'main trial', 'flame'),
  told('spark-off-on-main', 'main proving', 'spark', 'off'),
  told('pilot-shuts', 'main proving', 'pilot valve', 'shut'),
  begins('held-low', 'low-fire hold'),
  begins('released', 'modulation'),
  begins('heat-ends', 'run down'),
  told('main-shuts', 'run down', 'downstream valve', 'shut'),
  begins('post-purge', 'post-purge', { beside: AFTER_FUEL }),
  {
    id: 'flame-gone',
    step: null,
    how: 'lost',
    is: (e) => e.type === 'lost' && e.what === 'flame',
    beside: AFTER_FUEL,
  },
  {
    id: 'fan-stops',
    step: 'standby',
    how: 'told',
    is: (e) => e.type === 'command' && e.device === 'fan' && e.to === 'stop',
  },
  {
    id: 'air-opens',
    step: null,
    how: 'lost',
    is: (e) => e.type === 'lost' && e.what === 'airflow',
  },
  { id: 'locks-out', step: 'lockout', how: 'begins', is: (e) => e.type === 'lockout' },
  { id: 'reset', step: null, how: 'done', is: (e) => e.type === 'reset', after: 'lockout' },
  begins('starts-again', 'at-rest check', { after: 'reset' }),
];

/** Things that came in these events, each with its first time. */
export function timetableOf(events: readonly RunEvent[]): Timetable {
  const times = new Map<string, number>();
  let step: StepName = 'standby';
  const passed = new Set<string>();
  for (const event of events) {
    if (event.type === 'step') step = event.step;
    if (event.type === 'lockout' || event.type === 'reset') passed.add(event.type);
    for (const { id, step: own, is, after } of THINGS) {
      if (times.has(id) || !is(event)) continue;
      if (after !== undefined && !passed.has(after)) continue;
      if (own !== null && own !== 'lockout' && own !== step) continue;
      times.set(id, event.t);
    }
  }
  return times;
}
