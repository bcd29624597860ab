import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * `rules` are packages/haccp and its published values, `parts` everything else that needs nothing but itself; `shop`
 * has a PostgreSQL of its own, started once and cloned for each file. Files share the modules that a worker has read,
 * which is most of the work of a small one; none of them replaces a module or leaves anything behind in one. Left
 * alone, a machine of two cores would be given one worker.
 */
export default defineConfig({
  root,
  test: {
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [
      {
        root,
        test: {
          name: 'rules',
          isolate: false,
          testTimeout: 20_000,
          include: ['packages/haccp/**/*.test.ts', 'tests/published/**/*.test.ts'],
        },
      },
      {
        root,
        test: {
          name: 'parts',
          isolate: false,
          testTimeout: 20_000, // on a machine that has other work
          include: [
            'packages/{contracts,documents,messages}/**/*.test.ts',
            'apps/**/*.test.{ts,tsx}',
            'tests/bench/**/*.test.ts',
            '.config/*.test.mjs',
          ],
        },
      },
      {
        root,
        test: {
          name: 'shop',
          isolate: false,
          include: ['tests/api/**/*.test.ts', 'prisma/**/*.test.ts'],
          globalSetup: 'tests/support/one-postgres.ts',
          testTimeout: 20_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
