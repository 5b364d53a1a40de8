/** A learning system of SCORM 1.2: a page with the run-time interface, the package in a frame within a frame of it. */
import { COURSE, type Script } from './system-server.ts';

export interface Kept {
  readonly cmi: {
    readonly suspend_data: string;
    readonly core: {
      readonly lesson_status: string;
      readonly exit: string;
      readonly session_time: string;
      readonly score: { readonly raw: string; readonly min: string; readonly max: string };
    };
  };
}

export interface ScormPlayer {
  readonly script: Script;
  /** As it was kept last; null before anything was. */
  kept(): Kept | null;
  /** Everything that was called, in order: name, element and value. */
  calls(): readonly (readonly string[])[];
}

export const PLAYER = '/player.html';

const PAGE = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Player</title>
<style>html,body,iframe{margin:0;width:100%;height:100%;border:0}</style>
<script src="/scorm12.js"></script><script src="/player.js"></script></head>
<body><iframe title="course" src="/shelf.html"></iframe></body></html>`;
const SHELF = `<!doctype html><html lang="en"><head><title>Shelf</title>
<style>html,body,iframe{margin:0;width:100%;height:100%;border:0}</style></head>
<body><iframe title="package" src="${COURSE}index.html"></iframe></body></html>`;

const code = (kept: string): string => `
const api = new Scorm12API({ autocommit: false, mastery_override: true, logLevel: 4 });
const kept = ${kept};
if (kept !== null) api.loadFromJSON({ ...kept.cmi, core: { ...kept.cmi.core, entry: 'resume' } }, 'cmi');
api.loadFromJSON({ student_data: { mastery_score: '50' } }, 'cmi');
let n = Date.now() * 1000;
// What is sent as the page goes need not come in its order: each is numbered.
const tell = (what, data) =>
  fetch('/' + what, { method: 'POST', keepalive: true, body: JSON.stringify({ n: ++n, data }) });
const spied = {};
for (const name of ['LMSInitialize', 'LMSGetValue', 'LMSSetValue', 'LMSCommit', 'LMSFinish', 'LMSGetLastError', 'LMSGetErrorString']) {
  spied[name] = (...args) => {
    const said = api[name](...args);
    if (!name.startsWith('LMSGet')) tell('called', [name, ...args, String(said)]);
    if (name === 'LMSCommit') tell('keep', api.renderCMIToJSONObject());
    return said;
  };
}
window.API = spied;
`;

export function scormPlayer(): ScormPlayer {
  const kept: Numbered<Kept>[] = [];
  const calls: Numbered<readonly string[]>[] = [];
  const last = () => inOrder(kept).at(-1) ?? null;
  return {
    kept: last,
    calls: () => inOrder(calls),
    script(_request, { pathname }, body) {
      switch (pathname) {
        case PLAYER:
          return { type: 'text/html', body: PAGE };
        case '/shelf.html':
          return { type: 'text/html', body: SHELF };
        case '/player.js':
          return { type: 'text/javascript', body: code(JSON.stringify(last())) };
        case '/keep':
          kept.push(JSON.parse(body));
          return { status: 204 };
        case '/called':
          calls.push(JSON.parse(body));
          return { status: 204 };
        default:
          return null;
      }
    },
  };
}

interface Numbered<T> {
  readonly n: number;
  readonly data: T;
}

function inOrder<T>(all: readonly Numbered<T>[]): readonly T[] {
  return [...all].sort((a, b) => a.n - b.n).map(({ data }) => data);
}
