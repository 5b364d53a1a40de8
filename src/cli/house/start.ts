import { join } from 'node:path';
import {
  lanAddresses,
  type RunningServer,
  readSettings,
  type ServerSettings,
  startServer,
  stopOnSignal,
} from '../../server/index.ts';
import { loadLibrary } from '../library.ts';
import { buildPageIfStale } from './page-build.ts';
import { DIST, ROOT } from './paths.ts';
import { sayFailure } from './say-failure.ts';

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

async function start(): Promise<void> {
  const read = readSettings(process.env, join(ROOT, 'data'));
  if (!read.ok) {
    process.stderr.write(`${read.problem}\n`);
    process.exitCode = 2;
    return;
  }
  const { settings } = read;
  say('Flamewright: making the page ready …');
  await buildPageIfStale();

  const server = await startServer({ root: DIST, settings, library: () => loadLibrary(ROOT) });
  stopOnSignal({ close: server.stop });
  sayWhere(server, settings);
}

function sayWhere({ port, instructorKey }: RunningServer, settings: ServerSettings): void {
  const { host } = settings;
  if (settings.port !== 0 && port !== settings.port) {
    say(`Port ${settings.port} is taken; using ${port}.`);
  }
  say('');
  say(`  Here:             http://${host ?? 'localhost'}:${port}`);
  if (host === undefined) {
    for (const address of lanAddresses()) say(`  On this network:  http://${address}:${port}`);
  }
  say('');
  if (instructorKey === null) {
    say('Classes are opened with the key that INSTRUCTOR_KEY holds.');
  } else {
    say('Classes are opened on this machine without a key; on any other with this one:');
    say(`  ${instructorKey}`);
  }
  say('');
  say('A simulator with training values: not for commissioning or operating equipment.');
  say('Stop with Ctrl+C.');
}

await start().catch(sayFailure);
