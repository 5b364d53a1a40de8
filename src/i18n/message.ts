import { isMessage, say } from './say.ts';

/** A code with parameters; a parameter may be a phrase of its own or a list of words. */
export interface Message {
  readonly code: string;
  readonly params?: Readonly<Record<string, MessageValue>>;
}
export type MessageValue = string | number | Message | readonly string[];

/** The sentence of a code. An unknown code is a mistake in the program and throws. */
export function message(code: string, params: Readonly<Record<string, MessageValue>> = {}): string {
  if (!isMessage(code)) throw new Error(`no message has the code ${code}`);
  const parts: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(params)) parts[name] = part(value);
  return say(code, parts);
}

export function sayMessage(said: Message): string {
  return message(said.code, said.params);
}

function part(value: MessageValue): string | number {
  if (typeof value === 'string' || typeof value === 'number') return value;
  return 'code' in value ? sayMessage(value) : listOf(value);
}

function listOf(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  const head = words.slice(0, -1).join(say('list.between'));
  return `${head}${say('list.before-last')}${words[words.length - 1]}`;
}
