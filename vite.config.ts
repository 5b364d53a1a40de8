import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA, type VitePWAOptions } from 'vite-plugin-pwa';
import { builtFilesPlugin } from './src/cli/house/built-files-plugin.ts';
import { libraryPlugin } from './src/cli/house/library-plugin.ts';

const root = fileURLToPath(new URL('.', import.meta.url));

/** The whole page is kept on the device at the first visit; a newer one waits until it is asked for. */
const offline: Partial<VitePWAOptions> = {
  registerType: 'prompt',
  injectRegister: false,
  manifest: {
    id: './',
    name: 'Flamewright',
    short_name: 'Flamewright',
    description:
      "A training simulator of a gas burner's safe-start sequence and of the plant around it.",
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#e6e9ea',
    theme_color: '#24506b',
    categories: ['education'],
    icons: [
      { src: 'icons/small.png', sizes: '192x192', type: 'image/png' },
      { src: 'icons/large.png', sizes: '512x512', type: 'image/png' },
      { src: 'icons/masked.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
  workbox: {
    globPatterns: ['**/*.{html,js,css,svg,png,wav,woff2,md,atlas}', 'quiz/*.json', 'files.json'],
    // Their names say what is in them.
    dontCacheBustURLsMatching: /^built\//,
    maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
    cleanupOutdatedCaches: true,
    inlineWorkboxRuntime: true,
    navigateFallback: 'index.html',
  },
};

export default defineConfig({
  root: join(root, 'src/app'),
  // By relative addresses: the built page also stands in folders of other servers.
  base: './',
  publicDir: join(root, 'assets', 'page'),
  plugins: [react(), libraryPlugin(root), builtFilesPlugin(), VitePWA(offline)],
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
