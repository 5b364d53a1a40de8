import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { findOrInstallChromium } from './chromium.ts';
import { add, type Counts, closingLine, countExit } from './counts.ts';
import { REPORTS, ROOT } from './paths.ts';
import { findOrInstallServices } from './services.ts';
import { findOrInstallShells } from './shells.ts';
import { STAGES, type Stage } from './stages.ts';

/** A runner that hangs must not keep the rest from being told. */
const STAGE_LIMIT_MS = 30 * 60 * 1000;

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

function runStage(stage: Stage): Counts {
  if (stage.needsBrowser && findOrInstallChromium(say) === undefined) return countExit(false);
  if (stage.usesPrograms) {
    findOrInstallShells(say);
    findOrInstallServices(say);
  }
  if (stage.report !== undefined) rmSync(stage.report, { force: true });
  const outcome = spawnSync(process.execPath, stage.args, {
    cwd: ROOT,
    env: { ...process.env, TZ: 'UTC' },
    stdio: ['ignore', 'inherit', 'inherit'],
    timeout: STAGE_LIMIT_MS,
  });
  if (outcome.error !== undefined) say(`Stopped: ${outcome.error.message}`);
  try {
    return stage.count(outcome.status === 0);
  } catch {
    say('It left no report to count.');
    return countExit(false);
  }
}

/** Runs every stage, whatever came of the ones before, and closes with the counts of all. */
function test(names: readonly string[]): void {
  const unknown = names.filter((name) => !STAGES.some((stage) => stage.name === name));
  if (unknown.length > 0) {
    const known = STAGES.map((stage) => stage.name).join(', ');
    process.stderr.write(`No stage "${unknown.join('", "')}". There are: ${known}.\n`);
    process.exitCode = 2;
    return;
  }
  mkdirSync(REPORTS, { recursive: true });
  const chosen = STAGES.filter((stage) => names.length === 0 || names.includes(stage.name));
  const lines: string[] = [];
  let total: Counts = { passed: 0, failed: 0 };
  for (const stage of chosen) {
    say(`\n── ${stage.title} (${stage.name})`);
    const startedMs = Date.now();
    const counts = runStage(stage);
    const tookS = ((Date.now() - startedMs) / 1000).toFixed(1);
    total = add(total, counts);
    const verdict = counts.failed === 0 ? 'ok' : 'FAILED';
    lines.push(`${verdict.padEnd(7)}${stage.name.padEnd(12)}${tookS.padStart(6)} s`);
  }
  say('');
  for (const line of lines) say(line);
  say('');
  say(closingLine(total));
  process.exitCode = total.failed === 0 ? 0 : 1;
}

test(process.argv.slice(2));
