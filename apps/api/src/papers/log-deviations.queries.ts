import type { ControlPoint } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { numberOf } from './deviation-on-paper';
import type { Telling } from './telling';
import type { Logged } from './logged-rows.queries';

/** The deviation that the row opened, else the latest at this point. */
export async function deviationNumbers(
  tx: Tx,
  { controlPointId }: ControlPoint,
  entries: readonly Logged[],
  say: Telling['say'],
): Promise<(entry: Logged) => string | undefined> {
  const found = await tx.deviation.findMany({
    where: { controlPointId, lotId: { in: [...new Set(entries.map(({ lotId }) => lotId))] } },
    select: { number: true, subjectId: true, lotId: true },
    orderBy: { number: 'desc' },
  });
  return (entry) => {
    const own = found.filter(({ lotId }) => lotId === entry.lotId);
    const deviation = own.find(({ subjectId }) => subjectId === entry.id) ?? own[0];
    return deviation && numberOf(deviation, say);
  };
}
