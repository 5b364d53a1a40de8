import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BankLine, ItemCard } from '../../quiz/index.ts';

/** What is shipped of made items: their cards, and what became of the seeds that were tried. */
export interface BankFile {
  readonly v: 1;
  readonly items: readonly ItemCard[];
  readonly report: readonly BankLine[];
}

export function bankFile(root: string): string {
  return join(root, 'assets', 'page', 'quiz', 'items.json');
}

/** A line an item, so that a change shows as what it is. */
export function writeBank(file: string, { items, report }: Omit<BankFile, 'v'>): void {
  const lines = (all: readonly unknown[]) => all.map((one) => JSON.stringify(one)).join(',\n');
  writeFileSync(file, `{"v":1,"items":[\n${lines(items)}\n],"report":[\n${lines(report)}\n]}\n`);
}

/** @returns null where there is none */
export function readBank(file: string): BankFile | null {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as BankFile) : null;
}
