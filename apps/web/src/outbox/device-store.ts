import { Dexie, type DexieOptions, type EntityTable } from 'dexie';
import type { Entry, OutboxStore } from './entry';

type Row = Entry & { order: number };

/** Rows keep the order in which they were made. */
export function deviceStore(indexedDb?: Pick<DexieOptions, 'indexedDB' | 'IDBKeyRange'>): OutboxStore {
  const db = new Dexie('larderbook-outbox', indexedDb) as Dexie & { entries: EntityTable<Row, 'order'> };
  db.version(1).stores({ entries: '++order, &id' });
  const { entries } = db;
  return {
    add: (entry) =>
      db.transaction('rw', entries, async () => {
        if ((await entries.where({ id: entry.id }).count()) === 0) await entries.add(entry);
      }),
    all: () => entries.orderBy('order').toArray(),
    change: async (id, change) => void (await entries.where({ id }).modify(change)),
    remove: async (id) => void (await entries.where({ id }).delete()),
  };
}
