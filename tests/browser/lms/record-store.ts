/** A learning system of cmi5: hands out a pass once, keeps states, and looks at every statement. */
import { randomUUID } from 'node:crypto';
import validate from '@learninglocker/xapi-validation';
import { type Answer, COURSE, type Script } from './system-server.ts';

export const ACTOR = {
  objectType: 'Agent',
  account: { homePage: 'https://college.example/', name: 'learner-7' },
};
const ACTIVITY = 'https://college.example/courses/42/exercise';
const RETURN = '/back.html';
const SESSION = 'https://w3id.org/xapi/cmi5/context/extensions/sessionid';

export interface Statement {
  readonly id: string;
  readonly verb: { readonly id: string };
  readonly result?: { readonly score?: { readonly scaled: number }; readonly duration?: string };
  readonly context: {
    readonly registration: string;
    readonly extensions: Readonly<Record<string, unknown>>;
    readonly contextActivities: { readonly category: readonly { readonly id: string }[] };
  };
}

export interface RecordStore {
  readonly script: Script;
  readonly statements: Statement[];
  /** What was not as it should be: of a statement, a pass, or a call. */
  readonly complaints: string[];
  readonly states: Map<string, string>;
  /** Opens the package for the learner once more. */
  launch(origin: string, mode?: 'Normal' | 'Review'): string;
}

export function recordStore(): RecordStore {
  const registration = randomUUID();
  const statements: Statement[] = [];
  const complaints: string[] = [];
  const states = new Map<string, string>();
  let pass: { readonly token: string; given: boolean } | null = null;

  const ask = (method: string, url: URL, body: string, authorization: string): Answer => {
    if (authorization !== `Basic ${pass?.token}`) complaints.push(`no pass: ${url.pathname}`);
    const resource = url.pathname.slice('/lrs/'.length);
    const id = url.searchParams.get('stateId');
    switch (`${method} ${resource}`) {
      case 'GET activities/state':
        if (id === null) return { body: JSON.stringify([...states.keys()]) };
        return states.has(id) ? { body: states.get(id) ?? '' } : { status: 404 };
      case 'PUT activities/state':
        states.set(id ?? '', body);
        return { status: 204 };
      case 'GET agents/profile':
        return { body: '[]' };
      case 'POST statements': {
        const all = JSON.parse(body) as Statement[];
        for (const one of all) complaints.push(...troublesOf(one));
        statements.push(...all);
        return { body: JSON.stringify(all.map((one) => one.id)) };
      }
      default:
        complaints.push(`${method} ${url.pathname}`);
        return { status: 400 };
    }
  };
  return {
    statements,
    complaints,
    states,
    script(request, url, body) {
      if (url.pathname === RETURN) return { type: 'text/html', body: '<title>Back</title>Back' };
      if (url.pathname === '/pass') {
        if (request.method !== 'POST') complaints.push('the pass is fetched by POST');
        if (pass === null || pass.given) {
          return { body: JSON.stringify({ 'error-code': '1', 'error-text': 'already in use' }) };
        }
        pass.given = true;
        return { body: JSON.stringify({ 'auth-token': pass.token }) };
      }
      if (!url.pathname.startsWith('/lrs/')) return null;
      if (request.headers['x-experience-api-version'] !== '1.0.3') complaints.push('no version');
      return ask(request.method ?? '', url, body, request.headers.authorization ?? '');
    },
    launch(origin, mode = 'Normal') {
      pass = { token: Buffer.from(randomUUID()).toString('base64'), given: false };
      states.set(
        'LMS.LaunchData',
        JSON.stringify({
          contextTemplate: {
            contextActivities: { grouping: [{ id: 'https://college.example/courses/42' }] },
            extensions: { [SESSION]: randomUUID() },
          },
          launchMode: mode,
          launchMethod: 'AnyWindow',
          masteryScore: 0.5,
          moveOn: 'Passed',
          returnURL: `${origin}${RETURN}`,
        }),
      );
      const query = new URLSearchParams({
        endpoint: `${origin}/lrs/`,
        fetch: `${origin}/pass`,
        actor: JSON.stringify(ACTOR),
        registration,
        activityId: ACTIVITY,
      });
      return `${origin}${COURSE}index.html?${query}`;
    },
  };
}

export function verbOf({ verb }: Statement): string {
  return verb.id.slice(verb.id.lastIndexOf('/') + 1);
}

function troublesOf(statement: Statement): string[] {
  const { default: inner } = validate as unknown as { default?: typeof validate };
  const found = (inner ?? validate)(statement).map((warning) => JSON.stringify(warning));
  const { context } = statement;
  if (context.extensions[SESSION] === undefined) found.push('no session id');
  if (!context.contextActivities.category.some(({ id }) => id.endsWith('categories/cmi5'))) {
    found.push('no category of cmi5');
  }
  return found;
}
