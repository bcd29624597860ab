import type { Formula, Product } from '@larderbook/contracts';
import { personNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { formulaVersions } from './formula-in-use';
import { planSummaries } from './plans.queries';
import { productsNow, type ProductNow } from './products-now';

export type ProductHead = Omit<Product, 'formulas' | 'plans'>;

/** Versions are those the next lot is made by. */
export async function listProducts(tx: Tx, productIds?: readonly string[]): Promise<ProductHead[]> {
  const products = await productsNow(tx, productIds);
  const versions = await tx.$queryRaw<{ productId: string; formulaVersion: number | null; planInForce: number | null }[]>`
    SELECT t.id AS "productId", (SELECT max(f.version) FROM formula f WHERE f.product_id = t.id) AS "formulaVersion",
      (SELECT p.version FROM plan p JOIN plan_adoption a ON a.plan_id = p.id WHERE p.product_id = t.id
       ORDER BY a.seq DESC LIMIT 1) AS "planInForce"
    FROM product t WHERE t.id = ANY(${[...products.keys()]}::uuid[])`;
  const byProduct = new Map(versions.map((row) => [row.productId, row]));

  const heads = [...products.values()].map((product) => {
    const { formulaVersion, planInForce } = byProduct.get(product.productId) ?? {};
    return { ...product, formulaVersion: formulaVersion ?? undefined, planInForce: planInForce ?? undefined };
  });
  return heads.sort((a, b) => a.name.localeCompare(b.name));
}

/** Throws `not-found`. */
export async function showProduct(tx: Tx, productId: string): Promise<Product> {
  const product = await knownProduct(tx, productId);
  const formulas = await listFormulas(tx, { productId });
  const plans = await planSummaries(tx, productId);
  return {
    ...product,
    formulaVersion: formulas[0]?.version,
    planInForce: plans.find(({ inForce }) => inForce)?.version,
    formulas,
    plans,
  };
}

/** Throws `not-found`. */
export async function showFormula(tx: Tx, formulaId: string): Promise<Formula> {
  const [formula] = await listFormulas(tx, { id: formulaId });
  if (!formula) throw new Problem('not-found', told('no-such-formula'));
  return formula;
}

/** Throws `not-found`. */
export async function knownProduct(tx: Tx, productId: string): Promise<ProductNow> {
  const product = (await productsNow(tx, [productId])).get(productId);
  if (!product) throw new Problem('not-found', told('no-such-product'));
  return product;
}

async function listFormulas(tx: Tx, where: { id: string } | { productId: string }): Promise<Formula[]> {
  const versions = await formulaVersions(tx, where);
  const names = await personNames(tx);
  return versions.map((formula) => ({
    ...formula,
    recordedAt: formula.recordedAt.toISOString(),
    recordedBy: names.get(formula.recordedBy) ?? '',
  }));
}
