/** What a command comes to: all its words, said at once when it is done, and the exit code. */
export interface Outcome {
  readonly exit: 0 | 2;
  readonly stdout: string;
  readonly stderr: string;
}

export function succeed(stdout: string): Outcome {
  return { exit: 0, stdout: withEnd(stdout), stderr: '' };
}

/** Bad input or usage: nothing on stdout, so that no half result is taken for a whole one. */
export function refuse(stderr: string): Outcome {
  return { exit: 2, stdout: '', stderr: withEnd(stderr) };
}

function withEnd(text: string): string {
  return text === '' || text.endsWith('\n') ? text : `${text}\n`;
}
