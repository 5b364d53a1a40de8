/** A file to begin with: in order from the first moment, with words to be written over. */
import { say } from '../../i18n/index.ts';
import { fileText, type Plain, type PlainGroup } from '../../scenario/editing/index.ts';
import type { AuthorKind } from './author-kinds.ts';
import type { AuthorFault, AuthorPlant } from './author-protocol.ts';

export interface NewFile {
  readonly kind: AuthorKind;
  readonly id: string;
  readonly title: string;
  readonly plant: AuthorPlant;
  /** Null: nothing is wrong. */
  readonly fault: AuthorFault | null;
}

const CALL_S = 5;
const ARRIVE_S = 2;
const START_S = 320;

export function newFile(wanted: NewFile): string {
  const { kind, id, title, plant, fault } = wanted;
  const head = { id, title, ...(kind === 'quiz' ? {} : { plant: plant.id }) };
  const faults = fault === null ? [] : [{ fault: fault.id, severity: fault.typical }];
  const start = {
    initial: (plant.sound?.initial ?? {}) as unknown as PlainGroup,
    ...(faults.length === 0 ? {} : { faults }),
  };
  const call = [{ at: CALL_S, do: 'call-for-heat', on: true }];
  const until = plant.sound?.until ?? START_S;
  // A fault tells by running what it does: the page offers to write it here.
  const expect =
    fault === null
      ? { reaches: 'modulation', lockout: 'none', by: until }
      : { lockout: 'none', by: until };
  switch (kind) {
    case 'start':
      return fileText({
        ...head,
        summary: say('author.new.summary'),
        caution: say('author.new.caution'),
        ...start,
        actions: call,
        until,
        expect,
      });
    case 'job':
      return fileText({
        ...head,
        level: 2,
        skills: ['sequence'],
        site: { name: say('author.new.site'), where: say('author.new.where') },
        card: {
          complaint: say('author.new.complaint'),
          saw: say('author.new.saw'),
          by: say('author.new.by'),
          when: say('author.new.when'),
        },
        people: [{ topic: 'what happened', says: say('author.new.says'), truth: 'true' }],
        tools: 'all',
        budgetMinutes: 45,
        caution: say('author.new.caution'),
        ...start,
        ...(fault === null
          ? { userError: { what: say('author.new.user-error'), mend: MEND } }
          : {}),
        ...(fault === null ? { actions: SWITCHED_OFF } : {}),
        arriveAt: ARRIVE_S,
        debrief: say('author.new.debrief'),
        expect,
      });
    case 'lesson':
      return fileText({
        ...head,
        caution: say('author.new.caution'),
        intro: say('author.new.intro'),
        ...start,
        actions: call,
        steps: plant.steps.filter((step) => !NO_STOP.has(step)).map((step): Plain => ({ step })),
        outro: say('author.new.outro'),
        until,
      });
    case 'drill':
      return fileText({
        ...head,
        skill: 'sequence',
        caution: say('author.new.caution'),
        ...start,
        actions: call,
        arriveAt: 40,
        question: say('author.new.question'),
        ...(fault === null ? choices(2) : { claim: [fault.id] }),
        limitS: 120,
        debrief: say('author.new.debrief'),
      });
    case 'quiz':
      return fileText({
        ...head,
        items: [
          {
            id: 'first',
            kind: 'what follows',
            skills: ['sequence'],
            level: 2,
            plant: plant.id,
            question: say('author.new.question'),
            ...choices(3),
          },
        ],
      });
  }
}

/** Whoever learns is not stopped where nothing is asked of a start. */
const NO_STOP: ReadonlySet<string> = new Set(['standby', 'run down', 'post-purge', 'lockout']);
const SWITCHED_OFF = [{ at: 1, do: 'remote-enable', on: false }];
const MEND = [{ at: 60, do: 'remote-enable', on: true }];

function choices(count: number) {
  const of = (code: 'author.new.option' | 'author.new.why') =>
    Array.from({ length: count }, (_, i) => say(code, { number: i + 1 }));
  return { options: of('author.new.option'), right: 0, why: of('author.new.why') };
}
