import { limitCondition } from '@larderbook/contracts';
import { scaled, type Condition } from '@larderbook/haccp';
import { check } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import type { SayOf } from '@larderbook/messages';

export type ConditionDraft = { kind: Condition['kind'] | ''; said: string };
export const noCondition: ConditionDraft = { kind: '', said: '' };

export const conditionKinds = [
  'product',
  'statement',
  'support',
  'nitrite',
  'accelerator',
  'salt in water phase',
  'place',
] as const satisfies Condition['kind'][];

export function conditionOf({ kind, said }: ConditionDraft, say: SayOf<'own-limits'>): { value: Condition } | { fault: string } {
  const { value } = check(limitCondition, partsOf(kind, said.trim()));
  return value ? { value } : { fault: say(missing[kind]) };
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

const missing = {
  '': 'missing-kind',
  product: 'missing-product',
  place: 'missing-place',
  nitrite: 'missing-amount',
  accelerator: 'missing-amount',
  'salt in water phase': 'missing-amount',
  statement: 'missing-statement',
  support: 'missing-support',
} as const satisfies Record<ConditionDraft['kind'], string>;

/** Another class or place is one more that will do; anything else has to hold as well. */
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
