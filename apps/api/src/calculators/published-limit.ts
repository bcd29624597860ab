import { catalogue, type CriticalLimit } from '@larderbook/haccp';
import type { Voice } from '@larderbook/messages';
import { Problem } from '../platform/problem';
import { limitsIn } from '../platform/tell';
import { told } from '../platform/told';
import { titleOf } from '../products/published-limits';

type OfKind<K extends CriticalLimit['kind']> = Extract<CriticalLimit, { kind: K }>;

/** Called as a reader in this voice calls it. Throws `cannot-be-calculated`. */
export function publishedLimit<K extends CriticalLimit['kind']>(
  key: string,
  voice: Voice,
  ...kinds: K[]
): { title: string; limit: OfKind<K> } {
  const found = catalogue.find((entry) => entry.key === key);
  if (!found) throw new Problem('cannot-be-calculated', told('no-published-limit', { key }));
  const title = titleOf(found, limitsIn(voice).sayName);
  const { limit } = found;
  if (!isOfKind(limit, kinds)) throw new Problem('cannot-be-calculated', told('limit-of-another-kind', { title }));
  return { title, limit };
}

const isOfKind = <K extends CriticalLimit['kind']>(limit: CriticalLimit, kinds: K[]): limit is OfKind<K> =>
  (kinds as string[]).includes(limit.kind);
