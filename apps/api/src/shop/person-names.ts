import type { Tx } from '../platform/database';

/** A shop has few people, and those who left stay on their records. */
export type PersonNames = ReadonlyMap<string, string>;

export async function personNames(tx: Tx): Promise<PersonNames> {
  const people = await tx.person.findMany({ select: { id: true, name: true } });
  return new Map(people.map(({ id, name }) => [id, name]));
}

type Made = { recordedBy: string; recordedAt: Date; takenAt?: Date; station?: string };

export const madeBy = (made: Made, names: PersonNames) => ({
  personId: made.recordedBy,
  name: names.get(made.recordedBy) ?? '',
  at: (made.takenAt ?? made.recordedAt).toISOString(),
  recordedAt: made.recordedAt.toISOString(),
  station: made.station ?? '',
});
