import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

/** `rules` need nothing but themselves; `shop` has a PostgreSQL of its own, started once and cloned for each file. */
export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: 'rules',
          include: ['packages/**/*.test.ts', 'apps/**/*.test.{ts,tsx}', 'tests/published/**/*.test.ts', '.config/*.test.mjs'],
        },
      },
      {
        root,
        test: {
          name: 'shop',
          include: ['tests/api/**/*.test.ts', 'prisma/**/*.test.ts'],
          globalSetup: 'tests/support/one-postgres.ts',
          testTimeout: 20_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
