/** A name that nothing else has. `crypto.randomUUID` is not there on the plain address of a network. */
export function anyId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
