import { fileURLToPath } from 'node:url';
import { mergeConfig } from 'vite';
import api from '../vite.api.config.ts';
import { pseudoLanguage } from './pseudo-language.ts';

export default mergeConfig(api, {
  plugins: [pseudoLanguage],
  build: { outDir: fileURLToPath(new URL('../../node_modules/.larderbook-in-pseudo/apps/api/dist', import.meta.url)), sourcemap: false },
});
