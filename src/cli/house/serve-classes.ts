/**
 * A server of classes without a page, as a process of its own: for tests and for the load bench,
 * which end it by force. Its settings are the environment's; prints one line of JSON once it listens.
 */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readSettings, startServer, stopOnSignal } from '../../server/index.ts';
import { loadLibrary } from '../library.ts';
import { ROOT } from './paths.ts';

const read = readSettings(
  process.env,
  process.env.DATA ?? mkdtempSync(join(tmpdir(), 'flamewright-classes-')),
);
if (!read.ok) throw new Error(read.problem);
const server = await startServer({
  root: null,
  assets: join(ROOT, 'assets/page'),
  settings: { ...read.settings, host: read.settings.host ?? '127.0.0.1' },
  library: () => loadLibrary(ROOT),
  // A whole class comes from the one address of this machine.
  limits: { joins: { burst: 10_000, perS: 10_000 }, connections: { burst: 1e6, perS: 1e6 } },
});
stopOnSignal({ close: server.stop });
const { port, instructorKey } = server;
process.stdout.write(`${JSON.stringify({ port, instructorKey, pid: process.pid })}\n`);
