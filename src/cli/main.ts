import { fileURLToPath } from 'node:url';
import { runCommand, runLongCommand } from './commands/index.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

// A reader that has seen enough, such as `head`, closes the pipe: that is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

const words = process.argv.slice(2);
const long = runLongCommand(words, ROOT, (line) => process.stderr.write(`${line}\n`));
const { exit, stdout, stderr } = await (long ?? runCommand(words, ROOT));
process.exitCode = exit;
if (stdout !== '') process.stdout.write(stdout);
if (stderr !== '') process.stderr.write(stderr);
