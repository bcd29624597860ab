import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { projectRoot } from '../../apps/api/src/project-root';
import { buildProgram } from '../support/program';

/** Whatever it makes for a while, it makes here. */
const home = mkdtempSync(join(tmpdir(), 'larderbook-one-lot-'));
const out = join(home, 'papers');
chmodSync(home, 0o711); // run by root, the database belongs to another user

beforeAll(buildProgram, 120_000);
afterAll(() => rmSync(home, { recursive: true }));

test('npm run demo -- --once drives one lot to its customers and leaves its papers, and nothing else', () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(projectRoot, 'apps/api/dist/demo.js'), '--once', '--out', out], {
    env: { PATH: process.env.PATH, TMPDIR: home },
    cwd: '/',
    encoding: 'utf8',
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(stdout.trim().split('\n')).toEqual(
    ['lot-record.pdf', 'monitoring-log.pdf', 'trace.json', 'openapi.json'].map((name) => join(out, name)),
  );

  const read = (name: string) => readFileSync(join(out, name), 'latin1');
  for (const paper of ['lot-record.pdf', 'monitoring-log.pdf']) expect(read(paper)).toMatch(/^%PDF-/);
  const { customers, suppliers } = JSON.parse(read('trace.json')) as { customers: unknown[]; suppliers: unknown[] };
  expect([customers.length, suppliers.length > 0]).toEqual([2, true]);
  expect(JSON.parse(read('openapi.json'))).toMatchObject({ openapi: expect.stringMatching(/^3\./) as string });
  expect(readdirSync(home)).toEqual(['papers']);
}, 120_000);
