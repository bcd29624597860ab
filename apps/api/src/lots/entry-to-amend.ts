import { Problem } from '../platform/problem';
import { told } from '../platform/told';

type Asked = { amends?: string; reason?: string; lotId: string };

/**
 * Throws `reason-missing`, `not-found` for an entry of another lot, and `already-amended`.
 * @param find one entry, by its own id or by the id it corrects
 */
export async function entryToAmend<Row extends { lotId: string; voided: boolean | null }>(
  { amends, reason, lotId }: Asked,
  find: (where: { id: string } | { amendsId: string }) => Promise<Row | null>,
): Promise<Row | undefined> {
  if (!amends) return undefined;
  if (!reason) throw new Problem('reason-missing', told('say-why-corrected'));
  const entry = await find({ id: amends });
  if (!entry || entry.lotId !== lotId) {
    throw new Problem('not-found', told('no-entry-to-correct'));
  }
  if (entry.voided) throw new Problem('already-amended', told('was-voided'));
  if (await find({ amendsId: amends })) throw new Problem('already-amended');
  return entry;
}
