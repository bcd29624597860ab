import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { precompress } from './precompress.ts';
import { fewFiles } from './web/few-files.ts';
import { keepPages } from './web/keep-pages.ts';
import { preloadTextFace } from './web/preload-text-face.ts';
import { readMessages } from './web/read-messages.ts';

const web = fileURLToPath(new URL('../apps/web', import.meta.url));
const api = process.env.LARDERBOOK_API ?? 'http://127.0.0.1:4180';

export default defineConfig({
  root: web,
  plugins: [react(), readMessages, preloadTextFace, keepPages, precompress],
  server: { proxy: { '/api': api } },
  preview: { proxy: { '/api': api } },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: ['chrome111', 'safari16.4', 'firefox114'], // tablets of the last few years
    assetsInlineLimit: 2048,
    // Our pages forbid making code from text. zod tries it once, before any of our modules runs, unless it is told here.
    rolldownOptions: { output: { banner: 'globalThis.__zod_globalConfig ??= { jitless: true };', codeSplitting: { groups: fewFiles } } },
  },
});
