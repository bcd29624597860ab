import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const code = `export const isHeld = (limit: { kind: string }): boolean => limit.kind === 'dwell';
export const isLost = (kind: string): boolean => 'weightLoss' !== kind;
export const isMet = (verdict: { kind: string; figure: string }): boolean => verdict.kind === 'met' || verdict.figure === 'range';
export function said(limit?: { kind: string }): string {
  switch (limit?.kind) {
    case 'cooling':
      return 'cooling';
    default:
      return '';
  }
}
`;

/** What the linter refuses of the code, wherever it lies: file and line. */
function refused(...files) {
  const dist = fileURLToPath(new URL('../packages/haccp/dist/', import.meta.url)); // ignored by git
  mkdirSync(dist, { recursive: true });
  const folder = mkdtempSync(join(dist, 'kinds-of-limit-'));
  mkdirSync(join(folder, 'kinds'));
  const paths = files.map((file) => join(folder, file));
  for (const path of paths) writeFileSync(path, code);
  const { stdout } = spawnSync('npx', ['oxlint', '--config', '.config/oxlint.json', '--no-ignore', '--format', 'json', ...paths], {
    encoding: 'utf8',
  });
  rmSync(folder, { recursive: true });
  return JSON.parse(stdout)
    .diagnostics.filter(({ code: rule }) => rule === 'limits(registry)')
    .map(({ filename, labels: [{ span }] }) => [basename(filename), span.line]);
}

test('the linter refuses a switch and a comparison on a kind of limit, outside its folders and tests', { timeout: 20_000 }, () => {
  expect(refused('judge.ts', 'judge.test.ts', 'kinds/of-kind.ts')).toEqual([
    ['judge.ts', 1],
    ['judge.ts', 2],
    ['judge.ts', 6],
  ]);
});
