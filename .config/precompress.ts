import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

const text = /\.(html|js|css|svg|json|webmanifest)$/;

/** Puts a .br and a .gz beside every text file, so that the server only has to send them. */
export const precompress: Plugin = {
  name: 'precompress',
  apply: 'build',
  writeBundle: {
    sequential: true,
    handler: ({ dir = '' }) => {
      for (const name of readdirSync(dir, { recursive: true, encoding: 'utf8' }).filter((file) => text.test(file))) {
        const file = join(dir, name);
        const content = readFileSync(file);
        writeFileSync(`${file}.br`, brotliCompressSync(content, { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } }));
        writeFileSync(`${file}.gz`, gzipSync(content, { level: 9 }));
      }
    },
  },
};
