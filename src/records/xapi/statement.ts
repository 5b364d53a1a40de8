/** What of a statement of the Experience API is used here. Plain data, as it is sent. */
import type { ItemKind, QuizMode } from '../../quiz/index.ts';
import { withoutForbidden } from '../plain-text.ts';

export type LanguageMap = Readonly<Record<string, string>>;
export interface XapiComponent {
  readonly id: string;
  readonly description: LanguageMap;
}
export interface XapiDefinition {
  readonly type: string;
  readonly name?: LanguageMap;
  readonly description?: LanguageMap;
  readonly interactionType?: 'choice' | 'sequencing' | 'numeric';
  readonly correctResponsesPattern?: readonly string[];
  readonly choices?: readonly XapiComponent[];
  readonly extensions?: Readonly<Record<string, unknown>>;
}
export interface XapiActivity {
  readonly objectType: 'Activity';
  readonly id: string;
  readonly definition: XapiDefinition;
}
export interface XapiResult {
  readonly success?: boolean;
  readonly completion?: boolean;
  readonly response?: string;
  /** ISO 8601. */
  readonly duration?: string;
  /** Left out where nothing was made of it. */
  readonly score?: {
    readonly scaled: number;
    readonly raw: number;
    readonly min: number;
    readonly max: number;
  };
  readonly extensions?: Readonly<Record<string, unknown>>;
}
export interface XapiStatement {
  readonly id: string;
  readonly actor: {
    readonly objectType: 'Agent';
    readonly name?: string;
    readonly account: { readonly homePage: string; readonly name: string };
  };
  readonly verb: { readonly id: string; readonly display: LanguageMap };
  readonly object: XapiActivity;
  readonly result: XapiResult;
  readonly context: {
    readonly registration: string;
    readonly platform: string;
    readonly language: string;
    readonly contextActivities?: {
      readonly parent?: readonly XapiActivity[];
      readonly grouping?: readonly XapiActivity[];
    };
    readonly extensions?: Readonly<Record<string, unknown>>;
  };
  readonly timestamp: string;
  readonly version: (typeof STATEMENT_VERSION)[XapiVersion];
}

/** Of the two editions in use; what is said here means the same in both. */
export const XAPI_VERSIONS = ['1.0.3', '2.0.0'] as const;
export type XapiVersion = (typeof XAPI_VERSIONS)[number];
/** What each edition wants to stand in a statement: the first speaks for all of its patches. */
export const STATEMENT_VERSION = { '1.0.3': '1.0.0', '2.0.0': '2.0.0' } as const;

export interface XapiSettings {
  /** An account, never a mail address: nothing here says who someone is elsewhere. */
  readonly actor: {
    readonly homePage: string;
    readonly name: string;
    readonly nickname?: string;
  };
  /** Under which questions and quizzes are named. */
  readonly homepage: string;
  readonly version: XapiVersion;
  /** `quizStartedISO` of those that were taken to their end. */
  readonly finished: readonly string[];
}

/** Names that a report of such a store shows, where the questions are not at hand. */
export interface XapiWords {
  readonly quizzes: Readonly<Record<QuizMode, string>>;
  /** What every quiz is about. */
  readonly about: string;
  readonly kinds: Readonly<Record<ItemKind, string>>;
}

export const LANGUAGE = 'en';
const HOME = 'https://flamewright.example/xapi';
/** For a device whose learner has given no name. */
export const XAPI_DEFAULTS: XapiSettings = {
  actor: { homePage: HOME, name: 'learner' },
  homepage: HOME,
  version: '1.0.3',
  finished: [],
};

/** Names as the end of an address; half a character, which no address can hold, falls away. */
export function iriPath(parts: readonly string[]): string {
  return parts.map((part) => encodeURIComponent(withoutForbidden(part))).join('/');
}

export function extension(name: string): string {
  return `${HOME}/${name}`;
}
