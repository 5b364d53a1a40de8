/** Where the device keeps texts by name. Its own page's shelf is localStorage; a test brings another. */
export interface Shelf {
  keys(): string[];
  get(key: string): string | null;
  /** @throws whatever the device says when it has no room or keeps nothing */
  set(key: string, text: string): void;
  remove(key: string): void;
}
