import type { ApiRequest } from '@larderbook/contracts';

/** A record that the server has not acknowledged yet. */
export type Entry = ApiRequest & {
  /** The UUIDv7 of the record: sending it twice lands once. */
  id: string;
  /** For people: "Core temperature 151.5 °F, lot 26061-2". */
  what: string;
  establishmentId: string;
  personId: string;
  /** ISO 8601 with offset. */
  takenAt: string;
  /** `parked`: the server refused it and a person must look. */
  state: 'waiting' | 'sending' | 'parked';
  /** Why it is parked, in the server's sentence. */
  problem?: { code: string; title: string; detail?: string };
  /** How often the server itself failed on it. */
  failures: number;
};

/** Holds entries until the server's 2xx. An entry is durable once `add` resolves, or `add` rejects. */
export type OutboxStore = {
  /** An entry whose id is there already stays as it was. */
  add(entry: Entry): Promise<void>;
  /** In the order in which they were kept. */
  all(): Promise<Entry[]>;
  change(id: string, change: Partial<Pick<Entry, 'state' | 'problem' | 'failures'>>): Promise<void>;
  remove(id: string): Promise<void>;
};
