import { Problem } from '../platform/problem';

type Asked = { amends?: string; reason?: string; lotId: string };

/**
 * The entry that a correction replaces; undefined when nothing is corrected. Throws `reason-missing`, `not-found` when
 * it is none of this lot's, and `already-amended`.
 * @param find one entry of the kind, by its own id or by the id it corrects
 */
export async function entryToAmend<Row extends { lotId: string; voided: boolean | null }>(
  { amends, reason, lotId }: Asked,
  find: (where: { id: string } | { amendsId: string }) => Promise<Row | null>,
): Promise<Row | undefined> {
  if (!amends) return undefined;
  if (!reason) throw new Problem('reason-missing', { detail: 'Say why the entry is corrected; both are kept.' });
  const entry = await find({ id: amends });
  if (!entry || entry.lotId !== lotId) {
    throw new Problem('not-found', { detail: 'This lot has no such entry to correct.' });
  }
  if (entry.voided) throw new Problem('already-amended', { detail: 'It was voided. Record it anew.' });
  if (await find({ amendsId: amends })) throw new Problem('already-amended');
  return entry;
}
