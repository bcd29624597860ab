import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * The rules by which lots are judged, with every way through them taken by a test: `npm run coverage` fails where a
 * branch of packages/haccp has none, and names the line.
 */
export default defineConfig({
  root,
  test: {
    isolate: false,
    maxWorkers: Math.max(2, availableParallelism() - 1),
    testTimeout: 20_000,
    include: ['packages/haccp/**/*.test.ts', 'tests/published/**/*.test.ts'],
    coverage: {
      enabled: true,
      provider: 'v8',
      reportsDirectory: 'test-results/coverage',
      include: ['packages/haccp/src/**/*.ts'],
      exclude: ['**/*.test.ts', '**/*.test-data.ts'],
      reporter: [['text', { skipFull: true }]],
      thresholds: { branches: 100 },
    },
  },
});
