import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { buildIfStale } from '../../apps/api/build-if-stale.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));

buildIfStale();
await build({
  configFile: false,
  root: here,
  logLevel: 'warn',
  ssr: { noExternal: [/^@larderbook\//] },
  build: {
    ssr: 'bench.ts',
    target: 'node20',
    outDir: 'dist',
    emptyOutDir: true,
    reportCompressedSize: false,
    rolldownOptions: { checks: { importIsUndefined: false } },
  },
});
await import('./dist/bench.js');
