import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { expect, test } from 'vitest';
import { deviceStore } from './device-store';
import type { Entry } from './entry';

const anEntry = (id: string, what = `Reading ${id}`): Entry => ({
  ...{ id, what, method: 'PUT', path: `/readings/${id}`, body: { value: 36 }, establishmentId: 'shop', personId: 'ada' },
  ...{ takenAt: '2026-03-02T09:00:00-06:00', state: 'waiting', failures: 0 },
});

/** A device: whatever opens its store finds what another left there. */
function aDevice() {
  const disk = { indexedDB: new IDBFactory(), IDBKeyRange };
  return { open: () => deviceStore(disk), disk };
}
const idsIn = async (store: ReturnType<typeof deviceStore>) => (await store.all()).map(({ id }) => id);

test('entries are there after a restart, word for word, in the order in which they were made', async () => {
  const device = aDevice();
  const store = device.open();
  for (const id of ['c', 'a', 'b']) await store.add(anEntry(id));
  const again = device.open();
  expect(await idsIn(again)).toEqual(['c', 'a', 'b']);
  expect((await again.all())[1]).toMatchObject(anEntry('a'));
});

test('an id that is there already stays as it was, also from two tabs at once', async () => {
  const device = aDevice();
  await Promise.all([device.open().add(anEntry('1', 'first')), device.open().add(anEntry('1', 'second'))]);
  await device.open().add(anEntry('1', 'third'));
  expect(await device.open().all()).toMatchObject([{ what: 'first' }]);
});

test('a change touches its entry alone and keeps its place, and is there after a restart', async () => {
  const device = aDevice();
  const store = device.open();
  for (const id of ['1', '2', '3']) await store.add(anEntry(id));
  await store.change('2', { state: 'parked', problem: { code: 'conflict', title: 'It was changed.' } });
  await store.change('gone', { state: 'parked' });
  const all = await device.open().all();
  expect(all.map(({ id, state }) => [id, state])).toEqual([
    ['1', 'waiting'],
    ['2', 'parked'],
    ['3', 'waiting'],
  ]);
  expect(all[1]?.problem).toEqual({ code: 'conflict', title: 'It was changed.' });
});

test('what is removed is gone for good, and what is kept afterwards comes last', async () => {
  const device = aDevice();
  const store = device.open();
  for (const id of ['1', '2']) await store.add(anEntry(id));
  await store.remove('2');
  await store.add(anEntry('3'));
  await store.add(anEntry('2', 'made anew'));
  expect(await idsIn(device.open())).toEqual(['1', '3', '2']);
});

test('a device that cannot keep it says so, and keeps nothing of it', async () => {
  const device = aDevice();
  const uncloneable = { ...anEntry('1'), body: { value: () => 36 } };
  await expect(device.open().add(uncloneable)).rejects.toThrow();
  expect(await idsIn(device.open())).toEqual([]);
});
