import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

const template = new URL('../../apps/web/service-worker.js', import.meta.url);

/** Writes the service worker with the list of this build's files, so that a tablet without a signal has them all. */
export const keepPages: Plugin = {
  name: 'keep-pages',
  apply: 'build',
  generateBundle: {
    order: 'post',
    handler(_options, bundle) {
      const files = ['/', '/icon.svg', '/larderbook.webmanifest', ...assets(Object.keys(bundle))];
      const version = `pages-${createHash('sha256').update(files.join()).digest('hex').slice(0, 12)}`;
      const head = `const version = ${JSON.stringify(version)};\nconst files = ${JSON.stringify(files)};\n`;
      this.emitFile({ type: 'asset', fileName: 'service-worker.js', source: head + readFileSync(template, 'utf8') });
    },
  },
};

const assets = (files: string[]) =>
  files
    .filter((file) => file.startsWith('assets/'))
    .map((file) => `/${file}`)
    .sort();
