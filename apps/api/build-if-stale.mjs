import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const vite = 'node_modules/vite/bin/vite.js';
const turn = join(root, 'node_modules/.larderbook-is-being-built');

export const steps = [
  {
    name: 'the database client',
    makes: 'apps/api/src/generated/prisma/client.ts',
    from: ['prisma/schema.prisma', '.config/prisma.config.ts'],
    run: ['node_modules/prisma/build/index.js', 'generate', '--config', '.config/prisma.config.ts'],
  },
  {
    name: 'the API',
    makes: 'apps/api/dist/main.js',
    from: ['apps/api/src', 'packages', 'prisma/demo', '.config/vite.api.config.ts', 'tsconfig.json'],
    run: [vite, 'build', '--config', '.config/vite.api.config.ts'],
  },
  {
    name: 'the pages',
    makes: 'apps/web/dist/index.html',
    from: ['apps/web', 'packages', '.config/vite.web.config.ts', '.config/web', '.config/precompress.ts', 'tsconfig.json'],
    run: [vite, 'build', '--config', '.config/vite.web.config.ts'],
  },
];

/** What shows no page needs none built. */
export const buildIfStale = ({ pages = true } = {}) => buildStale(steps.filter(({ name }) => pages || name !== 'the pages'));

/**
 * Builds what is missing or older than its sources; ends the program when that fails. Takes some milliseconds when all is
 * fresh. Of several that come at once, one builds and the others wait for it.
 */
export function buildStale(needed) {
  if (!needed.some(isStale)) return;
  takeTurn();
  try {
    for (const step of needed) if (isStale(step)) build(step); // asked anew at each: a step may make what the next is built from
  } finally {
    rmSync(turn, { recursive: true, force: true });
  }
}

function isStale({ makes, from }) {
  const made = statSync(join(root, makes), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  return [...from, 'package-lock.json'].some((path) => newest(join(root, path)) > made);
}

/** A folder can be made only once. One that is two minutes old was left by a build that was killed. */
function takeTurn() {
  for (;;) {
    try {
      return mkdirSync(turn);
    } catch (failure) {
      if (failure.code !== 'EEXIST') throw failure;
    }
    const since = statSync(turn, { throwIfNoEntry: false })?.mtimeMs ?? 0;
    if (Date.now() - since > 120_000) rmSync(turn, { recursive: true, force: true });
    else Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
  }
}

function build({ name, makes, run }) {
  const began = Date.now();
  process.stdout.write(`Building ${name} … `);
  const env = { ...process.env, NODE_ENV: 'production' }; // else a test runner's own would build pages without a service worker
  const { status, stdout, stderr } = spawnSync(process.execPath, run, { cwd: root, env, encoding: 'utf8' });
  if (status !== 0) {
    rmSync(join(root, makes), { force: true }); // or it would pass for fresh the next time
    rmSync(turn, { recursive: true, force: true });
    console.error(`failed.\n${stdout}\n${stderr}`);
    process.exit(1);
  }
  console.log(`${((Date.now() - began) / 1000).toFixed(1)} s`);
}

/** The latest change in a file or below a folder; what was built or installed there, and tests, do not count. */
function newest(path) {
  if (!existsSync(path) || /[/\\](node_modules|dist)$|\.test\.tsx?$/.test(path)) return 0;
  const { mtimeMs } = statSync(path);
  return statSync(path).isDirectory() ? Math.max(mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name)))) : mtimeMs;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) buildIfStale();
