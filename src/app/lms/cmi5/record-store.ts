/** The record store of a learning system, by the Experience API over the page's own fetch. */
import type { XapiVersion } from '../../../records/lms/index.ts';
import type { LaunchAddress } from './read-launch.ts';

export type Fetch = typeof fetch;

/** `over`: this session may say no more. `refused`: it would be refused again. */
export type StoreTrouble = 'over' | 'refused' | 'not reached';
export interface StoreFailure {
  readonly trouble: StoreTrouble;
  readonly detail: string;
}

/** What a promise of the store was broken with. */
export function storeFailure(error: unknown): StoreFailure {
  const detail = error instanceof Error ? error.message : String(error);
  const trouble = (error as { readonly trouble?: StoreTrouble } | null)?.trouble;
  return { trouble: trouble ?? 'not reached', detail };
}

function failed(trouble: StoreTrouble, detail: string): Error {
  return Object.assign(new Error(detail), { trouble });
}

/** A document may be a little more than this when the page goes, and no longer be sent. */
const LAST_BYTES = 60_000;

/**
 * The pass for this session; a learning system hands it out once.
 *
 * @throws what `storeFailure` reads
 */
export async function fetchPass(get: Fetch, address: string): Promise<string> {
  const response = await reach(() => get(address, { method: 'POST' }));
  const said = (await response.json().catch(() => null)) as Record<string, unknown> | null;
  const pass = said?.['auth-token'];
  if (response.ok && typeof pass === 'string' && pass !== '') return pass;
  const text = said?.['error-text'];
  throw failed('over', typeof text === 'string' ? text : `${response.status}`);
}

export function recordStore(get: Fetch, launch: LaunchAddress, pass: string, version: XapiVersion) {
  const { endpoint, activityId, registration } = launch;
  const agent = JSON.stringify(launch.actor);
  const headers = { authorization: `Basic ${pass}`, 'x-experience-api-version': version };
  const json = { ...headers, 'content-type': 'application/json' };
  const of = { activityId, agent, registration };

  async function ask(resource: string, query: Record<string, string>, init: RequestInit = {}) {
    const address = `${endpoint}${resource}?${new URLSearchParams(query)}`;
    const response = await reach(() => get(address, { headers, ...init }));
    if (response.ok) return response;
    throw failed(troubleOf(response.status), `${resource} ${response.status}`);
  }

  return {
    /** Names of the documents that are there: asking for one that is not would be a failure. */
    async stateIds(): Promise<readonly string[]> {
      const ids: unknown = await (await ask('activities/state', of)).json();
      return Array.isArray(ids) ? ids.filter((id) => typeof id === 'string') : [];
    },
    async state(stateId: string): Promise<string> {
      return (await ask('activities/state', { ...of, stateId })).text();
    },
    async putState(stateId: string, text: string): Promise<void> {
      const keepalive = text.length < LAST_BYTES;
      const init = { method: 'PUT', headers: json, body: text, keepalive };
      await ask('activities/state', { ...of, stateId }, init);
    },
    async profileIds(): Promise<readonly string[]> {
      const ids: unknown = await (await ask('agents/profile', { agent })).json();
      return Array.isArray(ids) ? ids.filter((id) => typeof id === 'string') : [];
    },
    async profile(profileId: string): Promise<string> {
      return (await ask('agents/profile', { agent, profileId })).text();
    },
    /** One that is known already by its id counts as sent. */
    async say(statements: readonly object[]): Promise<void> {
      const body = JSON.stringify(statements);
      const init = { method: 'POST', headers: json, body, keepalive: body.length < LAST_BYTES };
      const response = await reach(() => get(`${endpoint}statements`, init));
      if (response.ok || response.status === CONFLICT) return;
      throw failed(troubleOf(response.status), `statements ${response.status}`);
    },
  };
}

const CONFLICT = 409;

async function reach(ask: () => Promise<Response>): Promise<Response> {
  try {
    return await ask();
  } catch (error) {
    throw failed('not reached', error instanceof Error ? error.message : String(error));
  }
}

function troubleOf(status: number): StoreTrouble {
  if (status === 401 || status === 403) return 'over';
  return status >= 500 || status === 408 || status === 429 ? 'not reached' : 'refused';
}
