import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BankLine, ItemCard, Moved } from '../../quiz/index.ts';

/** What is shipped of made items: their cards, and what became of the seeds that were tried. */
export interface BankFile {
  readonly v: 1;
  readonly items: readonly ItemCard[];
  readonly report: readonly BankLine[];
  /** As classes have shown it; left out where none has. */
  readonly moved?: Moved;
}

export function bankFile(root: string): string {
  return join(root, 'assets', 'page', 'quiz', 'items.json');
}

/** A line an item, so that a change shows as what it is. */
export function writeBank(file: string, { items, report, moved = {} }: Omit<BankFile, 'v'>): void {
  const lines = (all: readonly unknown[]) => all.map((one) => JSON.stringify(one)).join(',\n');
  const shown = JSON.stringify(moved);
  writeFileSync(
    file,
    `{"v":1,"items":[\n${lines(items)}\n],"report":[\n${lines(report)}\n],"moved":${shown}}\n`,
  );
}

/** @returns null where there is none */
export function readBank(file: string): BankFile | null {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as BankFile) : null;
}
