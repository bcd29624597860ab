import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildIfStale } from './build-if-stale.mjs';

const env = fileURLToPath(new URL('../../.env', import.meta.url));
if (existsSync(env)) process.loadEnvFile(env);

buildIfStale({ pages: false });
process.setSourceMapsEnabled(true);
await import('./dist/backup.js');
