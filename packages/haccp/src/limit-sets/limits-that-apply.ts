import type { Condition } from './condition';
import type { Jurisdiction, LimitRow, LimitSet } from './limit-set';
import type { ProductClass } from './product-class';
import { limitSetById, usualSetOf } from './sets';

export type Applies = {
  row: LimitRow;
  /** A row that names no class is for every product. */
  isForClass: boolean;
  alsoNeeds: readonly Condition[];
};

export type Asked = { product: ProductClass; jurisdiction: Jurisdiction; place?: string; set?: LimitSet };

/**
 * A row without a product is for every product; one of another place is left out, and kept where the place is not said.
 * `alsoNeeds` is still to be calculated or answered.
 */
export function limitsThatApply({ product, jurisdiction, place, set }: Asked): Applies[] {
  const asked = set ?? (jurisdiction === 'own' ? undefined : limitSetById(usualSetOf[jurisdiction]));
  return (asked?.rows ?? []).filter((row) => isFor(row, product, place)).map(explain);
}

function isFor({ conditions }: LimitRow, product: ProductClass, place: string | undefined): boolean {
  return conditions.every((condition) => {
    if (condition.kind === 'product') return condition.among.includes(product);
    return condition.kind !== 'place' || place === undefined || condition.among.includes(place);
  });
}

const explain = (row: LimitRow): Applies => ({
  row,
  isForClass: row.conditions.some(({ kind }) => kind === 'product'),
  alsoNeeds: row.conditions.filter(({ kind }) => kind !== 'product'),
});
