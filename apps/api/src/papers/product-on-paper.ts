import type { PlanContent } from '@larderbook/contracts';
import type { FactData } from '@larderbook/documents';
import type { FormulaInUse } from '../products/formula-in-use';
import type { ProductNow } from '../products/products-now';

/** What is made: the description a plan begins with. */
export function productOnPaper({ process, intendedUse }: PlanContent, product: ProductNow | undefined): FactData[] {
  const plan = [
    { label: 'Process', value: capital(process) },
    { label: 'Intended use', value: intendedUse },
  ];
  return product ? [...plan, ...describe(product)] : plan;
}

/** By the formula in use when the plan is printed: shares of the meat, then of what is weighed on it. */
export const madeOf = ({ version, lines }: FormulaInUse): FactData => ({
  label: `Formula ${version}`,
  value: lines.map(({ itemName, percent }) => `${itemName} ${percent} %`).join(', '),
});

const describe = ({ code, species, storage, useByDays }: ProductNow): FactData[] => [
  { label: 'Product code', value: code },
  ...(species === 'none' ? [] : [{ label: 'Meat', value: capital(species) }]),
  { label: 'Kept', value: storage || 'not said' },
  { label: 'Use by', value: `${useByDays} days after packing` },
];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
