import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { precompress } from './precompress';

const web = fileURLToPath(new URL('../apps/web', import.meta.url));
const api = process.env.LARDERBOOK_API ?? 'http://127.0.0.1:4180';

/** Only the text face is fetched ahead of the style sheet; the title face may arrive a moment later. */
const preloadTextFace: Plugin = {
  name: 'preload-text-face',
  transformIndexHtml: {
    order: 'post',
    handler: (_html, { bundle }) => Object.keys(bundle ?? {})
      .filter((file) => file.includes('SourceSans3VF-Upright'))
      .map((file) => ({
        tag: 'link',
        attrs: { rel: 'preload', as: 'font', type: 'font/woff2', crossorigin: '', href: `/${file}` },
        injectTo: 'head' as const,
      })),
  },
};

export default defineConfig({
  root: web,
  plugins: [react(), preloadTextFace, precompress],
  server: { proxy: { '/api': api } },
  preview: { proxy: { '/api': api } },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: ['chrome111', 'safari16.4', 'firefox114'], // tablets of the last few years
    assetsInlineLimit: 2048,
    reportCompressedSize: true,
  },
});
