import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { libraryPlugin } from './src/cli/house/library-plugin.ts';

const root = fileURLToPath(new URL('.', import.meta.url));

export default defineConfig({
  plugins: [libraryPlugin(root)],
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    environment: 'node',
    env: { TZ: 'UTC' },
    setupFiles: ['tests/house/silent-console.ts', 'tests/house/all-messages.ts'],
    restoreMocks: true,
    // Left to itself it keeps a core free, which is half of a small machine.
    maxWorkers: '100%',
    // A hung test must end; a slow machine must not fail one.
    testTimeout: 30_000,
  },
});
