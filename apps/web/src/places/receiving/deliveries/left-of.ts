import type { Receipt } from '@larderbook/contracts';
import { massFromGrams, massOf, roundedMass } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';

/** The unit is the one in which it was weighed; undefined for a refused delivery. */
export function leftOf(
  { decision, weight, leftGrams }: Pick<Receipt, 'decision' | 'weight' | 'leftGrams'>,
  say: SayOf<'receiving'>,
): string | undefined {
  if (decision === 'refused') return undefined;
  const left = massFromGrams(leftGrams.toFixed(9));
  if (left <= 0n) return say('nothing-left');
  return left >= massOf(weight) ? say('all-left') : say('some-left', { weight: roundedMass(left, weight.unit, 2) });
}
