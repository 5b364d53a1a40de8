/** A session of cmi5: pass, launch data, preferences, then statements from `initialized` to `terminated`. */
import {
  type Cmi5Verb,
  cmi5Statement,
  idOfName,
  type XapiVersion,
} from '../../../records/lms/index.ts';
import type {
  Connected,
  LearningSystem,
  SystemMode,
  SystemTrouble,
  TellTrouble,
} from '../learning-system.ts';
import { LAUNCH_DATA, PREFERENCES, readLaunchData, readSoundWanted } from './launch-data.ts';
import type { LaunchAddress } from './read-launch.ts';
import {
  type Fetch,
  fetchPass,
  recordStore,
  type StoreFailure,
  type StoreTrouble,
  storeFailure,
} from './record-store.ts';
import { statementLine } from './statement-line.ts';

/** The browser, as far as a session needs it. */
export interface Around {
  readonly fetch: Fetch;
  readonly nowMs: () => number;
  readonly nowISO: () => string;
  readonly newId: () => string;
  readonly later: (act: () => void, ms: number) => void;
}

const OUR_STATE = 'flamewright';
const MODES: Readonly<Record<string, SystemMode>> = {
  Normal: 'normal',
  Browse: 'browse',
  Review: 'review',
};
const TROUBLES: Readonly<Record<StoreTrouble, SystemTrouble['trouble']>> = {
  over: 'session over',
  refused: 'refused',
  'not reached': 'not reached',
};

export async function openCmi5(
  launch: LaunchAddress,
  version: XapiVersion,
  around: Around,
  tell: TellTrouble,
): Promise<Connected> {
  const beganMs = around.nowMs();
  try {
    const pass = await fetchPass(around.fetch, launch.fetchAddress);
    const store = recordStore(around.fetch, launch, pass, version);
    const ids = await store.stateIds();
    const data = readLaunchData(await store.state(LAUNCH_DATA));
    if (data === null) {
      return { system: null, trouble: { trouble: 'not begun', detail: LAUNCH_DATA } };
    }
    const sound = (await store.profileIds()).includes(PREFERENCES)
      ? readSoundWanted(await store.profile(PREFERENCES))
      : null;
    const saved = ids.includes(OUR_STATE) ? await store.state(OUR_STATE) : null;
    const mode = MODES[data.launchMode] ?? 'normal';
    const mastery = data.masteryScore ?? null;

    const tellStore = (failure: StoreFailure | null): void =>
      tell(failure === null ? null : { ...failure, trouble: TROUBLES[failure.trouble] });
    const line = statementLine(store.say, tellStore, around.later);
    const statement = (verb: Cmi5Verb, id: string, scaled?: number): object => {
      const durationS = (around.nowMs() - beganMs) / 1000;
      const said = { verb, id, atISO: around.nowISO(), durationS };
      const template = data.contextTemplate;
      const scored = scaled === undefined ? said : { ...said, scaled };
      return cmi5Statement(scored, launch, template, mastery, version);
    };
    /** The same each time, so that a store which has it already takes it for what it is. */
    const onceId = (verb: Cmi5Verb): string =>
      idOfName(`${launch.activityId}/${launch.registration}/${verb}`);
    const judgeId = (passed: boolean): string => (passed ? onceId('passed') : around.newId());
    let judged = false;
    let completing: Promise<boolean> | null = null;
    let over = false;
    let keeping: Promise<void> = Promise.resolve();
    let next: string | null = null;

    void line.say(statement('initialized', around.newId()));
    const system: LearningSystem = {
      mode,
      mastery,
      attempt: launch.registration,
      saved,
      room: null,
      returnAddress: data.returnURL ?? null,
      sound,
      keep(packed) {
        if (over || mode !== 'normal') return;
        next = packed;
        keeping = keeping.then(async () => {
          const text = next;
          if (text === null) return;
          next = null;
          await store.putState(OUR_STATE, text).then(
            () => tell(null),
            (error: unknown) => tellStore(storeFailure(error)),
          );
        });
      },
      async report({ scaled, passed }, before) {
        if (over || mode !== 'normal') return before;
        if (!before.completed) {
          completing ??= line.say(statement('completed', onceId('completed')));
        }
        // One judgement a session, and none after it was passed.
        const judging =
          passed === null || before.passed || judged
            ? null
            : line.say(statement(passed ? 'passed' : 'failed', judgeId(passed), scaled));
        judged ||= judging !== null;
        const completed = before.completed || ((await completing) ?? false);
        const taken = (await judging) ?? false;
        return { completed, passed: before.passed || (taken && passed === true) };
      },
      leave() {
        if (over) return;
        over = true;
        // The page is about to go: what waits is sent beside what is under way.
        if (next !== null && mode === 'normal') {
          store.putState(OUR_STATE, next).catch(() => undefined);
          next = null;
        }
        line.sayLast(statement('terminated', around.newId()));
      },
    };
    return { system, trouble: null };
  } catch (error) {
    const { trouble, detail } = storeFailure(error);
    const why = trouble === 'over' ? 'session over' : 'not begun';
    return { system: null, trouble: { trouble: why, detail } };
  }
}
