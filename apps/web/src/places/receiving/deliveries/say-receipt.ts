import type { Receipt } from '@larderbook/contracts';
import { massFromGrams, massOf, sayMass } from '@larderbook/haccp';

/** "Hollow Holt Meats, lot PO112" */
export const saySource = ({ supplier, supplierLot }: Pick<Receipt, 'supplier' | 'supplierLot'>): string =>
  `${supplier.name}, lot ${supplierLot}`;

/** A value as it was entered: "60 lb", "37.1 °F". */
export const sayEntered = ({ value, unit }: { value: number; unit: string }): string => `${value} ${unit}`;

/** What is left, in the unit in which it was weighed; nothing is said of a delivery that was refused. */
export function sayLeft({ decision, weight, leftGrams }: Pick<Receipt, 'decision' | 'weight' | 'leftGrams'>): string | undefined {
  if (decision === 'refused') return undefined;
  const left = massFromGrams(leftGrams.toFixed(9));
  if (left <= 0n) return 'nothing left';
  return left >= massOf(weight) ? 'all of it left' : `${sayMass(left, weight.unit, 2)} left`;
}
