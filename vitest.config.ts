import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { libraryPlugin } from './src/cli/house/library-plugin.ts';

const root = fileURLToPath(new URL('.', import.meta.url));

/** Functions over what they are given: their files may share a process, and what it has loaded. */
const SHARING = [
  'app',
  'bench',
  'diagnosis',
  'engine',
  'faults',
  'field',
  'i18n',
  'judging',
  'machines',
  'numeric',
  'plant',
  'proof',
  'quantity',
  'quiz',
  'records',
  'reference',
  'scenario',
  'view',
  'wording',
];
const inFolders = SHARING.map((folder) => `tests/${folder}/**/*.test.{ts,tsx}`);

export default defineConfig({
  plugins: [libraryPlugin(root)],
  test: {
    environment: 'node',
    env: { TZ: 'UTC' },
    setupFiles: ['tests/house/silent-console.ts', 'tests/house/all-messages.ts'],
    restoreMocks: true,
    unstubGlobals: true,
    // Left to itself it keeps a core free, which is half of a small machine.
    maxWorkers: '100%',
    // A hung test must end; a slow machine must not fail one.
    testTimeout: 30_000,
    projects: [
      { extends: true, test: { name: 'sharing', include: inFolders, isolate: false } },
      {
        extends: true,
        test: {
          name: 'alone',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**', ...inFolders],
        },
      },
    ],
  },
});
