/** Closes the server on the first request to stop and leaves at once on the second. */
export function stopOnSignal(server: { close(): Promise<unknown> }): void {
  let stopping = false;
  const stop = () => {
    if (stopping) process.exit(1);
    stopping = true;
    server.close().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
}
