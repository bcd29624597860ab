import { buildIfStale } from './build-if-stale.mjs';

buildIfStale();
process.setSourceMapsEnabled(true);
await import('./dist/demo.js');
