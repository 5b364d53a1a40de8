import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sayMessage } from '../../i18n/index.ts';
import { jsonSchemas, phrase } from '../../scenario/index.ts';
import { type CommandSpec, inQuotes, parseArguments } from '../arguments.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';

const SPEC: CommandSpec = {
  command: 'schema',
  options: {},
  least: 0,
  most: 1,
  expected: phrase('usage.expect.schema'),
};

/** Writes the JSON Schemas by which an editor completes and checks a file while it is written. */
export function schema(words: readonly string[], root: string): Outcome {
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return refuse(sayMessage(parsed.mistake));
  const folder = parsed.value.positionals[0] ?? join(root, 'scenarios', 'schema');
  const written: string[] = [];
  for (const [name, text] of Object.entries(jsonSchemas())) {
    const file = join(folder, name);
    try {
      mkdirSync(folder, { recursive: true });
      writeFileSync(file, text);
    } catch {
      const params = { command: SPEC.command, found: inQuotes(file) };
      return refuse(sayMessage(phrase('usage.not-written', params)));
    }
    written.push(sayMessage(phrase('schema.written', { file })));
  }
  return succeed(written.join('\n'));
}
