import { sayCondition, type Condition } from './condition';
import type { Jurisdiction, LimitRow, LimitSet } from './limit-set';
import type { ProductClass } from './product-class';
import { sayFigureOf } from './say-row';
import { limitSetById, usualSetOf } from './sets';

/** A row that is for this product, in words, with where it stands and what else has to hold. */
export type Applies = {
  row: LimitRow;
  says: string;
  /** "It is for ground beef." */
  why: string;
  because: string;
  alsoNeeds: readonly Condition[];
};

export type Asked = { product: ProductClass; jurisdiction: Jurisdiction; place?: string; set?: LimitSet };

/**
 * The rows of a jurisdiction that are for a product class, explained with their paragraph. A row that names no product
 * is for every product; a row of another place is left out, and kept where the place is not said. What still has to be
 * worked out or answered comes back in `alsoNeeds`.
 */
export function limitsThatApply({ product, jurisdiction, place, set }: Asked): Applies[] {
  const asked = set ?? (jurisdiction === 'own' ? undefined : limitSetById(usualSetOf[jurisdiction]));
  return (asked?.rows ?? []).filter((row) => isFor(row, product, place)).map((row) => explain(row, product));
}

function isFor({ conditions }: LimitRow, product: ProductClass, place: string | undefined): boolean {
  return conditions.every((condition) => {
    if (condition.kind === 'product') return condition.among.includes(product);
    return condition.kind !== 'place' || place === undefined || condition.among.includes(place);
  });
}

function explain(row: LimitRow, product: ProductClass): Applies {
  const isNamed = row.conditions.some(({ kind }) => kind === 'product');
  const alsoNeeds = row.conditions.filter(({ kind }) => kind !== 'product');
  const { citation, edition, confirmed } = row.limit.source;
  const needs = alsoNeeds.length > 0 ? ` Needs: ${alsoNeeds.map(sayCondition).join('; ')}.` : '';
  const doubt = confirmed ? '' : ' Not confirmed in the source itself.';
  const why = isNamed ? `It is for ${product}.` : 'It is for every product.';
  return {
    row,
    says: `${row.title}: ${sayFigureOf(row).join('; ')}`,
    why,
    because: `${citation} (${edition}). ${why}${needs}${doubt}`,
    alsoNeeds,
  };
}
