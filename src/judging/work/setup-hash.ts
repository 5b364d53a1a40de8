import type { RunSetup } from '../../engine/index.ts';
import { addText, createHash, digest } from '../../numeric/index.ts';

/** Tells one setup from another: work that was done at another one no longer fits. */
export function setupHash(setup: RunSetup): string {
  const hash = createHash();
  addText(hash, JSON.stringify(setup));
  return digest(hash);
}
