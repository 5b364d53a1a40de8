import {
  createPageServer,
  lanAddresses,
  listenOnFreePort,
  parsePort,
  stopOnSignal,
} from '../../server/index.ts';
import { buildPageIfStale } from './page-build.ts';
import { DIST } from './paths.ts';
import { sayFailure } from './say-failure.ts';

const DEFAULT_PORT = 4173;

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

async function start(): Promise<void> {
  const asked = parsePort(process.env.PORT, DEFAULT_PORT);
  if (asked === undefined) {
    process.stderr.write(`PORT is "${process.env.PORT}": expected a whole number, 0 to 65535.\n`);
    process.exitCode = 2;
    return;
  }
  say('Flamewright: making the page ready …');
  await buildPageIfStale();

  const server = await createPageServer({ root: DIST });
  stopOnSignal(server);
  const port = await listenOnFreePort(server, { port: asked, host: process.env.HOST });
  if (asked !== 0 && port !== asked) say(`Port ${asked} is taken; using ${port}.`);
  say('');
  const host = process.env.HOST;
  say(`  Here:             http://${host ?? 'localhost'}:${port}`);
  if (host === undefined) {
    for (const address of lanAddresses()) say(`  On this network:  http://${address}:${port}`);
  }
  say('');
  say('A simulator with training values: not for commissioning or operating equipment.');
  say('Stop with Ctrl+C.');
}

await start().catch(sayFailure);
