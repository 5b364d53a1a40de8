/** Says what went wrong in words, without the trace of calls that led there. */
export function sayFailure(error: unknown): void {
  const words = error instanceof Error ? error.message : String(error);
  process.stderr.write(`${words.trimEnd()}\n`);
  process.exitCode = 1;
}
