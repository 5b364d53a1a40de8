import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
/** The built page. */
export const DIST = join(ROOT, 'dist');
/** What the test runners write for each other and for whoever asks why. */
export const REPORTS = join(ROOT, 'reports');
