import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const here = fileURLToPath(new URL('.', import.meta.url));

await build({
  configFile: false,
  root: here,
  logLevel: 'warn',
  ssr: { noExternal: [/^@larderbook\//] },
  build: { ssr: 'perturb.ts', target: 'node20', outDir: '../dist/perturb', emptyOutDir: true, reportCompressedSize: false },
});
await import('../dist/perturb/perturb.js');
