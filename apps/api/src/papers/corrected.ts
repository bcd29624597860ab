import type { AmendmentData } from '@larderbook/documents';

type Correctable = {
  amendedBy?: string;
  amends?: string;
  reason: string;
  made: { name: string; recordedAt: string };
};
/** `earlier` holds the entries that `entry` corrects, oldest first. */
export type Corrected<Entry> = { entry: Entry; earlier: Entry[] };

export function corrected<Entry extends Correctable>(entries: readonly Entry[], idOf: (entry: Entry) => string): Corrected<Entry>[] {
  const byId = new Map(entries.map((entry) => [idOf(entry), entry]));
  const before = (entry: Entry): Entry[] => {
    const amended = entry.amends ? byId.get(entry.amends) : undefined;
    return amended ? [...before(amended), amended] : [];
  };
  return entries.filter(({ amendedBy }) => amendedBy === undefined).map((entry) => ({ entry, earlier: before(entry) }));
}

type Fields<Entry> = Record<string, (entry: Entry) => string>;

export function amendmentsOf<Entry extends Correctable>({ entry, earlier }: Corrected<Entry>, fields: Fields<Entry>): AmendmentData[] {
  return [...earlier.slice(1), ...(earlier.length > 0 ? [entry] : [])].flatMap((after, index) => {
    const before = earlier[index];
    if (!before) return [];
    const signed = { why: after.reason, by: after.made.name, at: Date.parse(after.made.recordedAt) };
    const entered = { by: before.made.name, at: Date.parse(before.made.recordedAt) };
    return Object.entries(fields)
      .map(([field, say]) => ({ ...signed, field, was: say(before), entered, now: say(after) }))
      .filter(({ was, now }) => was !== now);
  });
}

type Voiding = { reason: string; made: { name: string; recordedAt: string } };

export const voidedOf = (field: string, was: string, { reason, made }: Voiding): AmendmentData => ({
  ...{ field, was, why: reason, by: made.name, at: Date.parse(made.recordedAt) },
});
