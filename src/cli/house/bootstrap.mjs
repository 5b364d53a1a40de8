/**
 * Installs the packages when they are missing or older than the lock file.
 *
 * Runs before every npm script, so it uses Node's own modules only and says nothing
 * when there is nothing to do. Whatever it says goes to stderr: stdout belongs to the
 * program that follows.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const LOCK = join(ROOT, 'package-lock.json');
const MODULES = join(ROOT, 'node_modules');
/** In node_modules, so that deleting the packages deletes the claim that they are there. */
const STAMP = join(MODULES, '.flamewright-installed');
const OLDEST_NODE = [20, 19];

function say(line) {
  process.stderr.write(`${line}\n`);
}

function nodeIsTooOld() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  return major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1]);
}

/** Platform and architecture count too: some packages are built for one machine only. */
function wantedStamp() {
  const hash = createHash('sha256').update(readFileSync(LOCK)).digest('hex');
  return `${hash} ${process.platform} ${process.arch}\n`;
}

/** True when npm's own record of what it installed agrees with the lock file. */
function alreadyInstalledByHand() {
  const record = join(MODULES, '.package-lock.json');
  if (!existsSync(record)) return false;
  const wanted = JSON.parse(readFileSync(LOCK, 'utf8')).packages;
  const present = JSON.parse(readFileSync(record, 'utf8')).packages;
  return Object.entries(wanted).every(
    ([path, entry]) => path === '' || entry.optional || present[path]?.version === entry.version,
  );
}

function install() {
  const npm = process.env.npm_execpath;
  const byNpm = npm !== undefined && basename(npm).startsWith('npm-cli');
  const command = byNpm ? process.execPath : 'npm';
  const args = [...(byNpm ? [npm] : []), 'ci', '--include=dev', '--loglevel=warn'];
  const outcome = spawnSync(command, args, {
    cwd: ROOT,
    env: { ...process.env, NODE_ENV: 'development' },
    stdio: ['ignore', 2, 2],
    shell: !byNpm && process.platform === 'win32',
  });
  if (outcome.error) say(`flamewright: npm could not be run: ${outcome.error.message}`);
  return outcome.status === 0;
}

function bootstrap() {
  if (nodeIsTooOld()) {
    say(
      `flamewright: Node ${OLDEST_NODE.join('.')} or newer is needed; this is ${process.version}.`,
    );
    return 1;
  }
  const stamp = wantedStamp();
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === stamp) return 0;
  if (!alreadyInstalledByHand()) {
    say('flamewright: installing packages (about half a minute, once)');
    if (!install()) {
      say('flamewright: the packages could not be installed; what npm said is above.');
      return 1;
    }
  }
  writeFileSync(STAMP, stamp);
  return 0;
}

process.exitCode = bootstrap();
