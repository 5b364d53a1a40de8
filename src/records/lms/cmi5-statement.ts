/** What a unit of cmi5 says to its learning system, in the order that cmi5 wants: initialized … terminated. */
import { LANGUAGE, STATEMENT_VERSION, type XapiVersion } from '../xapi/statement.ts';

export const CMI5_VERBS = ['initialized', 'completed', 'passed', 'failed', 'terminated'] as const;
export type Cmi5Verb = (typeof CMI5_VERBS)[number];

export interface Cmi5Launch {
  /** As the learning system gave it; handed back as it came. */
  readonly actor: Readonly<Record<string, unknown>>;
  readonly activityId: string;
  readonly registration: string;
}
export interface Cmi5Said {
  readonly verb: Cmi5Verb;
  /** A UUID. */
  readonly id: string;
  readonly atISO: string;
  /** Since this session began, s. */
  readonly durationS: number;
  /** 0 to 1; of `passed` and `failed`. */
  readonly scaled?: number;
}

const VERBS = 'http://adlnet.gov/expapi/verbs';
const CMI5 = 'https://w3id.org/xapi/cmi5/context';
const CATEGORY = { id: `${CMI5}/categories/cmi5`, objectType: 'Activity' } as const;
const MOVE_ON = { id: `${CMI5}/categories/moveon`, objectType: 'Activity' } as const;
const MASTERY = `${CMI5}/extensions/masteryscore`;
const JUDGED: readonly Cmi5Verb[] = ['passed', 'failed'];
const MOVES_ON: readonly Cmi5Verb[] = ['completed', 'passed', 'failed'];

/**
 * @param template context that the learning system wants in every statement; added to, never changed
 * @param masteryScore as the learning system said it; null where it did not
 */
export function cmi5Statement(
  said: Cmi5Said,
  launch: Cmi5Launch,
  template: Readonly<Record<string, unknown>>,
  masteryScore: number | null,
  version: XapiVersion,
): Readonly<Record<string, unknown>> {
  const { verb, id, atISO } = said;
  const activities = recordOf(template.contextActivities);
  const given = activities.category;
  const category = [
    ...(Array.isArray(given) ? given : given === undefined ? [] : [given]),
    CATEGORY,
    ...(MOVES_ON.includes(verb) ? [MOVE_ON] : []),
  ];
  const mastery = JUDGED.includes(verb) && masteryScore !== null ? { [MASTERY]: masteryScore } : {};
  const extensions = { ...recordOf(template.extensions), ...mastery };
  return {
    id,
    actor: launch.actor,
    verb: { id: `${VERBS}/${verb}`, display: { [LANGUAGE]: verb } },
    object: { objectType: 'Activity', id: launch.activityId },
    ...resultOf(said),
    context: {
      ...template,
      registration: launch.registration,
      contextActivities: { ...activities, category },
      ...(Object.keys(extensions).length === 0 ? {} : { extensions }),
    },
    timestamp: atISO,
    version: STATEMENT_VERSION[version],
  };
}

function resultOf({ verb, durationS, scaled }: Cmi5Said) {
  if (verb === 'initialized') return {};
  const duration = `PT${Math.max(0, durationS).toFixed(2)}S`;
  if (verb === 'completed') return { result: { completion: true, duration } };
  if (verb === 'terminated') return { result: { duration } };
  const score =
    scaled === undefined ? {} : { score: { scaled, raw: rounded(scaled * 100), min: 0, max: 100 } };
  return { result: { success: verb === 'passed', duration, ...score } };
}

function recordOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
