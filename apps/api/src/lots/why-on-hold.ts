import type { Account } from '@larderbook/contracts';
import type { DeviationBehind } from '../deviations/deviations-behind';
import { aboutDeviation } from '../deviations/what-it-is-about';
import { ended, sentence } from '../platform/account';
import type { LotRows } from './lot-rows';
import type { MissNow } from './misses-now';

/** The first deviation that is open, what is next about it, and how many more there are; undefined where none is. */
export function whyOnHold({ deviations }: LotRows, misses: ReadonlyMap<string, MissNow>, hasLeft: boolean): Account | undefined {
  const [first, ...others] = deviations.filter(({ isOpen }) => isOpen);
  if (!first) return undefined;
  return [
    sentence('deviation-open', { number: String(first.number) }),
    ...whatItIs(first, misses),
    whatIsNext(first),
    ...(others.length > 0 ? [sentence('more-open', { count: others.length })] : []),
    ...(hasLeft ? [sentence('packages-left-already')] : []),
  ];
}

function whatItIs({ deviationId, openedWith }: DeviationBehind, misses: ReadonlyMap<string, MissNow>): Account {
  const { description } = openedWith;
  return misses.get(deviationId)?.description ?? aboutDeviation({ ...openedWith, description: description && ended(description) });
}

function whatIsNext({ hasAction, toDecide }: DeviationBehind) {
  if (!hasAction) return sentence('next-record-action');
  return toDecide ? sentence('next-decide', toDecide) : sentence('next-close');
}
