/** The server of a learning system, as small as one can be: files, and what the scripts of a test answer. */
import { readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
import type { Folder } from './package-folder.ts';

const SCORM_AGAIN = createRequire(import.meta.url).resolve('scorm-again/scorm12');
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
};
/** Deep in the addresses of the system, as a package always is. */
export const COURSE = '/courses/42/content/';
/** A page of the system that is not about the package. */
export const ELSEWHERE = '/elsewhere.html';

export interface Answer {
  readonly status?: number;
  readonly type?: string;
  readonly body?: string | Uint8Array;
}
/** Null where it is not its business. */
export type Script = (request: IncomingMessage, url: URL, body: string) => Answer | null;

export interface SystemServer {
  readonly origin: string;
  close(): Promise<void>;
}

export async function systemServer(folder: Folder, script: Script): Promise<SystemServer> {
  const server = createServer((request, response) => {
    void answer(request, response, folder, script);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://127.0.0.1:${port}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  folder: Folder,
  script: Script,
): Promise<void> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const url = new URL(request.url ?? '/', 'http://system');
  const made = script(request, url, Buffer.concat(chunks).toString()) ?? fileAt(url, folder);
  const {
    status = 200,
    type = 'application/json',
    body = '',
  } = made ?? {
    status: 404,
    type: 'text/plain',
    body: 'not found',
  };
  response.writeHead(status, { 'content-type': type });
  response.end(body);
}

function fileAt({ pathname }: URL, folder: Folder): Answer | null {
  if (pathname === '/scorm12.js') {
    return { type: 'text/javascript', body: readFileSync(SCORM_AGAIN) };
  }
  if (pathname === '/favicon.ico') return { status: 204 };
  if (pathname === ELSEWHERE) return { type: 'text/html', body: '<title>Elsewhere</title>' };
  const body = pathname.startsWith(COURSE) ? folder[pathname.slice(COURSE.length)] : undefined;
  if (body === undefined) return null;
  return { type: TYPES[extname(pathname)] ?? 'application/octet-stream', body };
}
