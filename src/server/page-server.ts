import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import fastify, { type FastifyInstance } from 'fastify';
import { cacheControl, SECURITY_HEADERS } from './headers.ts';

export interface PageServerOptions {
  /** The folder of built files. */
  readonly root: string;
}

const BODY_BYTES = 1024;

/** Serves the built page and nothing else. */
export async function createPageServer(options: PageServerOptions): Promise<FastifyInstance> {
  const server = fastify({ bodyLimit: BODY_BYTES, forceCloseConnections: true });
  server.addHook('onRequest', async (_request, reply) => {
    reply.headers(SECURITY_HEADERS);
  });
  server.get('/healthz', async (_request, reply) =>
    reply.header('cache-control', 'no-store').send({ status: 'ok' }),
  );
  await registerPage(server, options.root);
  return server;
}

/**
 * The built page on a server.
 *
 * An address without a file extension is a place in the page, so the page answers it;
 * an address with one is a file, and a file that is not there is not found.
 *
 * @throws where no page is built
 */
export async function registerPage(server: FastifyInstance, root: string): Promise<void> {
  if (!existsSync(join(root, 'index.html'))) {
    throw new Error(`No built page in ${root}: run "npm run build" first.`);
  }
  // Browsers ask for this by themselves; the page names its icon in its own text.
  server.get('/favicon.ico', async (_request, reply) => reply.code(204).send());
  await server.register(fastifyStatic, {
    root,
    dotfiles: 'ignore',
    preCompressed: true,
    cacheControl: false,
    setHeaders(response, path) {
      response.setHeader('cache-control', cacheControl(path));
      response.setHeader('vary', 'accept-encoding');
    },
  });
  server.setNotFoundHandler(async (request, reply) => {
    const path = request.url.split('?', 1)[0] ?? '/';
    const isPlaceInPage = request.method === 'GET' && !/\.[^/]*$/.test(path);
    if (isPlaceInPage && !isForPrograms(path)) return reply.sendFile('index.html');
    return reply.code(404).type('text/plain; charset=utf-8').send('Not found.\n');
  });
}

/** Whoever asks there reads no page. */
function isForPrograms(path: string): boolean {
  return path.startsWith('/api/');
}
