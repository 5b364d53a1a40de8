import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import fastify, { type FastifyInstance } from 'fastify';
import { cacheControl, SECURITY_HEADERS } from './headers.ts';

export interface PageServerOptions {
  /** The folder of built files. */
  readonly root: string;
}

/**
 * Serves the built page.
 *
 * An address without a file extension is a place in the page, so the page answers it;
 * an address with one is a file, and a file that is not there is not found.
 */
export async function createPageServer(options: PageServerOptions): Promise<FastifyInstance> {
  if (!existsSync(join(options.root, 'index.html'))) {
    throw new Error(`No built page in ${options.root}: run "npm run build" first.`);
  }
  const server = fastify({ bodyLimit: 1024, forceCloseConnections: true });

  server.addHook('onRequest', async (_request, reply) => {
    reply.headers(SECURITY_HEADERS);
  });
  server.get('/healthz', async (_request, reply) =>
    reply.header('cache-control', 'no-store').send({ status: 'ok' }),
  );
  // Browsers ask for this by themselves; the page names its icon in its own text.
  server.get('/favicon.ico', async (_request, reply) => reply.code(204).send());
  await server.register(fastifyStatic, {
    root: options.root,
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
    if (isPlaceInPage) return reply.sendFile('index.html');
    return reply.code(404).type('text/plain; charset=utf-8').send('Not found.\n');
  });
  return server;
}
