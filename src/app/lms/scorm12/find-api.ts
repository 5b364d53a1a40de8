/** The run-time interface of SCORM 1.2, as far as it is used here. All that goes in and out is text. */
export interface ScormApi {
  LMSInitialize(nothing: ''): unknown;
  LMSGetValue(element: string): unknown;
  LMSSetValue(element: string, value: string): unknown;
  LMSCommit(nothing: ''): unknown;
  LMSFinish(nothing: ''): unknown;
  LMSGetLastError(): unknown;
  LMSGetErrorString(code: string): unknown;
}

/** Frames in frames; deeper than this nobody nests, and a page could go on for ever. */
const MOST_LEVELS = 20;

/** Looks for it as SCORM 1.2 says: in the windows around, then in the one that opened this, and around that. */
export function findScormApi(page: Window): ScormApi | null {
  return around(page) ?? around(openerOf(page));
}

function around(from: Window | null): ScormApi | null {
  let at = from;
  for (let level = 0; at !== null && level < MOST_LEVELS; level += 1) {
    const api = apiIn(at);
    if (api !== null) return api;
    at = at.parent === at ? null : at.parent;
  }
  return null;
}

/** A window of another server does not let itself be looked into. */
function apiIn(at: Window): ScormApi | null {
  try {
    const { API } = at as { readonly API?: unknown };
    return isApi(API) ? API : null;
  } catch {
    return null;
  }
}

function isApi(value: unknown): value is ScormApi {
  return typeof (value as ScormApi | null | undefined)?.LMSInitialize === 'function';
}

function openerOf(page: Window): Window | null {
  let at = page;
  for (let level = 0; level < MOST_LEVELS; level += 1) {
    const opener = quietly(() => at.opener as Window | null);
    if (opener !== null) return opener;
    if (at.parent === at) return null;
    at = at.parent;
  }
  return null;
}

function quietly<T>(ask: () => T | null): T | null {
  try {
    return ask() ?? null;
  } catch {
    return null;
  }
}
