import type { Formula } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { itemsNow, type ItemNow } from './items-now';

/** Items are as described now. Percentages are exact to four decimals. */
export type FormulaInUse = Pick<Formula, 'formulaId' | 'version' | 'expectedYieldPercent' | 'lines'> & {
  productId: string;
};

/** The latest version makes the next lot. */
export const formulaInUse = async (tx: Tx, productId: string): Promise<FormulaInUse | undefined> =>
  (await formulaVersions(tx, { productId }, 1))[0];

/** A lot keeps the version it was started on. */
export const formulaById = async (tx: Tx, formulaId: string): Promise<FormulaInUse | undefined> =>
  (await formulaVersions(tx, { id: formulaId }, 1))[0];

/** Latest first. */
export async function formulaVersions(tx: Tx, where: { id: string } | { productId: string }, most?: number) {
  const rows = await tx.formula.findMany({
    where,
    orderBy: { version: 'desc' },
    take: most,
    include: { lines: { orderBy: { position: 'asc' } }, _count: { select: { lots: true } } },
  });
  const items = await itemsNow(tx, [...new Set(rows.flatMap(({ lines }) => lines.map(({ itemId }) => itemId)))]);

  return rows.map(({ id, lines, expectedYieldPercent, _count, ...row }) => ({
    ...row,
    formulaId: id,
    expectedYieldPercent: expectedYieldPercent.toNumber(),
    usedByLots: _count.lots,
    lines: linesOf(lines, items),
  }));
}

type Row = { part: string; itemId: string; percent: { toNumber(): number } };

export const linesOf = (rows: readonly Row[], items: ReadonlyMap<string, ItemNow>): FormulaInUse['lines'] =>
  rows.map(({ part, itemId, percent }) => {
    const item = items.get(itemId);
    if (!item) throw new Error(`A formula names item ${itemId}, which is not there`);
    const { name: itemName, kind: itemKind, substance, fractionPercent } = item;
    return {
      part: part as 'meat' | 'ingredient',
      itemId,
      percent: percent.toNumber(),
      itemName,
      itemKind,
      substance,
      fractionPercent,
    };
  });
