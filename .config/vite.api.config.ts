import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** The API as one program: our own packages from their sources, everything in node_modules left there. */
export default defineConfig({
  root: fileURLToPath(new URL('../apps/api', import.meta.url)),
  ssr: { noExternal: [/^@larderbook\//] },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist',
    emptyOutDir: true,
    sourcemap: true,
    reportCompressedSize: false,
    rolldownOptions: {
      input: { main: 'src/main.ts', demo: 'src/demo.ts', verify: 'src/verify.ts', backup: 'src/backup.ts', restore: 'src/restore.ts' },
      output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: '[name].js' },
      checks: { importIsUndefined: false }, // decorator metadata asks for types at run time and makes do without
    },
  },
});
