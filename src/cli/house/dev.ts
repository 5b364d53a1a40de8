import { join } from 'node:path';
import { createServer } from 'vite';
import { ROOT } from './paths.ts';

/** The page while it is being worked on: rebuilt file by file as sources change. */
const server = await createServer({ configFile: join(ROOT, 'vite.config.ts') });
await server.listen();
server.printUrls();
server.bindCLIShortcuts({ print: true });
