import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { libraryPlugin } from './src/cli/house/library-plugin.ts';

const root = fileURLToPath(new URL('.', import.meta.url));

export default defineConfig({
  root: join(root, 'src/app'),
  publicDir: join(root, 'assets', 'page'),
  plugins: [react(), libraryPlugin(root)],
  worker: {
    format: 'es',
    plugins: () => [libraryPlugin(root)],
    rolldownOptions: { checks: { pluginTimings: false } },
  },
  server: { fs: { allow: [root] } },
  build: {
    outDir: join(root, 'dist'),
    // Where build time goes is no warning to a person who starts the program.
    rolldownOptions: { checks: { pluginTimings: false } },
    emptyOutDir: true,
    assetsDir: 'built',
    // A font or picture inside the style sheet would be refused by the page's own rules.
    assetsInlineLimit: 0,
    manifest: true,
    license: { fileName: 'licences.md' },
    modulePreload: { polyfill: false },
    target: 'es2022',
    chunkSizeWarningLimit: 700,
  },
});
