/**
 * `npm run bench:class`: how classes fare under load, with real clients in a process of their own.
 * `--small` is for machines that are busy with other things: the same ways with few learners.
 * Fails where anything was lost; times are only told.
 */
import { measureFanOut } from './bench-class/fan-out.ts';
import { fanOutInWords, lostServerInWords } from './bench-class/in-words.ts';
import { measureLostServer } from './bench-class/lost-server.ts';
import { withServices } from './bench-class/services.ts';

const isSmall = process.argv.includes('--small');
const asJson = process.argv.includes('--json');
const full = isSmall
  ? { one: 60, many: 120, perClass: 60, servers: [2], lost: 30, commands: 5, everyMs: 300 }
  : {
      one: 1000,
      many: 4000,
      perClass: 1000,
      servers: [2, 4],
      lost: 300,
      commands: 120,
      everyMs: 250,
    };
let isWhole = true;

function tell(figures: object, words: string, isComplete: boolean): void {
  process.stdout.write(`${asJson ? JSON.stringify(figures) : words}\n`);
  isWhole &&= isComplete;
}

const { one, many, perClass, lost, commands, everyMs } = full;
const alone = await measureFanOut({
  servers: 1,
  classes: 1,
  learners: one,
  commands,
  everyMs,
  environment: {},
});
tell(alone, fanOutInWords(alone), alone.missing === 0);

const hadServices = await withServices(async (newEnvironment) => {
  for (const servers of full.servers) {
    const spread = await measureFanOut({
      servers,
      classes: Math.ceil(many / perClass),
      learners: many,
      commands,
      everyMs,
      environment: await newEnvironment(),
    });
    tell(spread, fanOutInWords(spread), spread.missing === 0);
  }
  const killed = await measureLostServer(lost, await newEnvironment());
  const isKept = killed.actsMissing === 0 && killed.otherEntries === 0;
  tell(killed, lostServerInWords(killed), isKept);
});
if (hadServices !== null) process.stdout.write(`${hadServices}\n`);
if (!isWhole) process.exitCode = 1;
