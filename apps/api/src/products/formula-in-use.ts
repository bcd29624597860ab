import type { Formula } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { itemsNow, type ItemNow } from './items-now';

/** A version of a formula, its items as they are described now. Percentages are exact to four decimals. */
export type FormulaInUse = Pick<Formula, 'formulaId' | 'version' | 'expectedYieldPercent' | 'lines'> & {
  productId: string;
};

/** The version the next lot of a product is made by: the latest. */
export const formulaInUse = async (tx: Tx, productId: string): Promise<FormulaInUse | undefined> =>
  (await formulaVersions(tx, { productId }, 1))[0];

/** One version; a lot keeps to the one it was started on. */
export const formulaById = async (tx: Tx, formulaId: string): Promise<FormulaInUse | undefined> =>
  (await formulaVersions(tx, { id: formulaId }, 1))[0];

/** Versions of a formula, the latest first. */
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

/** The lines of a formula with their items as they are described now. */
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
