import { lotCode } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { dayIn } from '../platform/day-in';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

type NewLot = { productId: string; productCode: string; takenAt: Date };
const atOnce = 100;

/**
 * Numbered after the product's lots of that day of the shop; a number whose code is taken is passed over. Throws
 * `lot-code-taken`.
 */
export async function nextLotCode(tx: Tx, { productId, productCode, takenAt }: NewLot, { establishment }: Person): Promise<string> {
  const date = dayIn(establishment.timeZone, takenAt);
  const start = (await lotsThatDay(tx, productId, date, establishment.timeZone)) + 1;
  for (let n = start; n < start + 100 * atOnce; n += atOnce) {
    const codes = Array.from({ length: atOnce }, (_, index) =>
      codeOf(establishment.lotCodePattern, { date, n: n + index, product: productCode }),
    );
    const taken = new Set((await tx.lot.findMany({ where: { code: { in: codes } }, select: { code: true } })).map(({ code }) => code));
    const free = codes.find((code) => !taken.has(code));
    if (free) return free;
  }
  throw new Problem('lot-code-taken', told('no-code-free'));
}

function codeOf(pattern: string, parts: Parameters<typeof lotCode>[1]): string {
  const code = lotCode(pattern, parts);
  if (typeof code !== 'string') throw new Problem('invalid-input', [code, told('code-by-hand')]);
  return code;
}

async function lotsThatDay(tx: Tx, productId: string, date: string, timeZone: string): Promise<number> {
  const [counted] = await tx.$queryRaw<{ lots: number }[]>`
    SELECT count(*)::int AS lots FROM lot l
    WHERE l.product_id = ${productId}::uuid AND (l.taken_at AT TIME ZONE ${timeZone})::date = ${date}::date
      AND l.taken_at BETWEEN ${date}::timestamp - interval '1 day' AND ${date}::timestamp + interval '2 days'`;
  return counted?.lots ?? 0;
}
