import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const vite = 'node_modules/vite/bin/vite.js';

const steps = [
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

/** Builds what is missing or older than its sources; ends the program when that fails. Takes some milliseconds when all is fresh. */
export function buildIfStale() {
  for (const step of steps) {
    const made = statSync(join(root, step.makes), { throwIfNoEntry: false })?.mtimeMs ?? 0;
    const changed = Math.max(...[...step.from, 'package-lock.json'].map((path) => newest(join(root, path))));
    if (changed > made) build(step);
  }
}

function build({ name, makes, run }) {
  const began = Date.now();
  process.stdout.write(`Building ${name} … `);
  const { status, stdout, stderr } = spawnSync(process.execPath, run, { cwd: root, encoding: 'utf8' });
  if (status !== 0) {
    rmSync(join(root, makes), { force: true }); // or it would pass for fresh the next time
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
