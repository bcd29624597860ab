import { mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { lockDataFolder } from './data-folder-lock';

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'larderbook-lock-'));
  path = join(folder, 'larderbook.lock');
});
afterEach(() => rmSync(folder, { recursive: true }));

const held = () => JSON.parse(readFileSync(path, 'utf8')) as { pid: number; born: string; machine: string };
const leftBehind = async (change: object) => {
  (await lockDataFolder(folder)).release();
  const lock = await lockDataFolder(folder);
  const text = JSON.stringify({ ...held(), ...change, token: 'another' });
  lock.release();
  writeFileSync(path, text);
};

describe('the lock of a data folder', () => {
  test('keeps a second copy out, until the first lets go', async () => {
    const first = await lockDataFolder(folder);

    await expect(lockDataFolder(folder)).rejects.toThrow(
      `The data folder ${folder} is in use by another Larderbook (process ${process.pid}`,
    );

    first.release();
    (await lockDataFolder(folder)).release();
  });

  test('of several that come at once, one gets it', async () => {
    const tries = await Promise.allSettled([1, 2, 3, 4, 5].map(() => lockDataFolder(folder)));

    const got = tries.filter((one) => one.status === 'fulfilled');
    expect(got).toHaveLength(1);
    got[0]?.value.release();
  });

  test('one left by a process that has ended is taken over', async () => {
    await leftBehind({ pid: 2 ** 31 - 2 });

    (await lockDataFolder(folder)).release();
  });

  test('one whose process id now belongs to another program is taken over', async () => {
    await leftBehind({ born: 'before the power failed' });

    (await lockDataFolder(folder)).release();
  });

  test('one that a power failure left empty is taken over', async () => {
    writeFileSync(path, '');

    (await lockDataFolder(folder)).release();
  });

  test('one of another machine holds while its heart beats', async () => {
    await leftBehind({ machine: 'other-shop pid:[1]' });
    const heart = setInterval(() => utimesSync(path, new Date(), new Date()), 500);

    await expect(lockDataFolder(folder)).rejects.toThrow('on other-shop');

    clearInterval(heart);
  });

  test('one of another machine is taken over once its heart has stopped', { timeout: 15_000 }, async () => {
    await leftBehind({ machine: 'other-shop pid:[1]' });

    (await lockDataFolder(folder)).release();
  });
});
