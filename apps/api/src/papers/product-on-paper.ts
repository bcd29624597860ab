import type { PlanContent } from '@larderbook/contracts';
import type { FactData } from '@larderbook/documents';
import { codeOf, type SayOf } from '@larderbook/messages';
import type { FormulaInUse } from '../products/formula-in-use';
import type { ProductNow } from '../products/products-now';
import type { Telling } from './telling';

export function productOnPaper({ process, intendedUse }: PlanContent, product: ProductNow | undefined, { say, of }: Telling): FactData[] {
  const plan = [
    { label: say('process'), value: of('products')(codeOf('process', process)) },
    { label: say('intended-use'), value: intendedUse },
  ];
  return product ? [...plan, ...describe(product, say, of('products'))] : plan;
}

/** The formula in use when printed. Percentages are of the meat. */
export const madeOf = ({ version, lines }: FormulaInUse, say: Telling['say']): FactData => ({
  label: say('formula-version', { version: String(version) }),
  value: lines.map(({ itemName, percent }) => `${itemName} ${percent} %`).join(', '),
});

const describe = ({ code, species, storage, useByDays }: ProductNow, say: Telling['say'], sayProducts: SayOf<'products'>): FactData[] => [
  { label: say('code-of-product'), value: code },
  ...(species === 'none' ? [] : [{ label: say('meat'), value: sayProducts(codeOf('species', species)) }]),
  { label: say('kept'), value: storage || say('not-said') },
  { label: say('use-by-label'), value: say('use-by-days', { count: useByDays }) },
];
