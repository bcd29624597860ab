import { fileURLToPath } from 'node:url';
import { mergeConfig } from 'vite';
import { precompress } from '../precompress.ts';
import web from '../vite.web.config.ts';
import { pseudoLanguage } from './pseudo-language.ts';

const plugins = web.plugins?.filter((plugin) => plugin !== precompress); // most of the time that a build of the pages takes

export default mergeConfig(
  { ...web, plugins },
  {
    plugins: [pseudoLanguage],
    build: { outDir: fileURLToPath(new URL('../../node_modules/.larderbook-in-pseudo/apps/web/dist', import.meta.url)) },
  },
);
