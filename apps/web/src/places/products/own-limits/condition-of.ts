import { limitCondition } from '@larderbook/contracts';
import { productClasses, scaled, type Condition } from '@larderbook/haccp';
import { check } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';

/** A condition while it is written: its kind, and the one thing that is said of it. */
export type ConditionDraft = { kind: Condition['kind'] | ''; said: string };
export const noCondition: ConditionDraft = { kind: '', said: '' };

export const conditionChoices: { value: Condition['kind']; name: string }[] = [
  { value: 'product', name: 'For a class of product' },
  { value: 'statement', name: 'Something in words' },
  { value: 'support', name: 'Support that the plan has to name' },
  { value: 'nitrite', name: 'At least so much nitrite on the meat block' },
  { value: 'accelerator', name: 'At least so much erythorbate or ascorbate on the meat block' },
  { value: 'salt in water phase', name: 'At least so much salt in the water phase' },
  { value: 'place', name: 'In a nation, state or province' },
];
export const classChoices = productClasses.map((value) => ({ value, name: value }));

/** What was typed as a condition, or a sentence on what is missing. */
export function conditionOf({ kind, said }: ConditionDraft): { value: Condition } | { fault: string } {
  const { value } = check(limitCondition, partsOf(kind, said.trim()));
  return value ? { value } : { fault: missing[kind] };
}

function partsOf(kind: ConditionDraft['kind'], said: string): object {
  const least = scaled(numberOf(said) ?? NaN, 3);
  switch (kind) {
    case 'product':
    case 'place':
      return { kind, among: [said] };
    case 'nitrite':
    case 'accelerator':
      return { kind, least, per: 'meat block' };
    case 'salt in water phase':
      return { kind, least, formula: 'salt/(salt+water)' };
    default:
      return { kind, says: said };
  }
}

const amount = 'Give the amount, above zero.';
const missing: Record<ConditionDraft['kind'], string> = {
  '': 'Choose what kind of condition it is.',
  product: 'Choose the class of product.',
  place: 'Write the nation, state or province.',
  nitrite: amount,
  accelerator: amount,
  'salt in water phase': amount,
  statement: 'Write what has to hold.',
  support: 'Write what has to be supported.',
};

/** With one more condition; another class or place is one more that will do, anything else has to hold as well. */
export function withCondition(conditions: readonly Condition[], added: Condition): Condition[] {
  const at = conditions.findIndex(({ kind }) => kind === added.kind);
  const before = conditions[at];
  if (before?.kind === 'product' && added.kind === 'product')
    return conditions.toSpliced(at, 1, { kind: 'product', among: union(before.among, added.among) });
  if (before?.kind === 'place' && added.kind === 'place')
    return conditions.toSpliced(at, 1, { kind: 'place', among: union(before.among, added.among) });
  return [...conditions, added];
}

const union = <T>(some: readonly T[], others: readonly T[]): T[] => [...new Set([...some, ...others])];
