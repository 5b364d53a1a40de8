/** What the server notes of itself: never a name, a text or a secret. */
export interface Log {
  info(facts: object, what: string): void;
  warn(facts: object, what: string): void;
  error(facts: object, what: string): void;
}
