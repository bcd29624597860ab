import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { buildIfStale } from './build-if-stale.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const vite = 'node_modules/vite/bin/vite.js';

buildIfStale();

/** The API built again at each change and started again at each build; the pages by Vite, which passes /api on to it. */
const running = [
  [vite, 'build', '--watch', '--emptyOutDir', 'false', '--config', '.config/vite.api.config.ts', '--logLevel', 'warn'],
  ['--watch', '--enable-source-maps', 'apps/api/dist/main.js'],
  [vite, '--config', '.config/vite.web.config.ts'],
].map((command) => spawn(process.execPath, command, { cwd: root, stdio: 'inherit' }));

const stopAll = () => running.forEach((child) => child.kill('SIGTERM'));
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, stopAll);
for (const child of running) child.once('exit', stopAll);
