import { catalogue, type CriticalLimit } from '@larderbook/haccp';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

type OfKind<K extends CriticalLimit['kind']> = Extract<CriticalLimit, { kind: K }>;

export function publishedLimit<K extends CriticalLimit['kind']>(key: string, ...kinds: K[]): { title: string; limit: OfKind<K> } {
  const found = catalogue.find((entry) => entry.key === key);
  if (!found) throw new Problem('cannot-be-calculated', told('no-published-limit', { key }));
  const { title, limit } = found;
  if (!isOfKind(limit, kinds)) {
    throw new Problem('cannot-be-calculated', told('limit-of-another-kind', { title }));
  }
  return { title, limit };
}

const isOfKind = <K extends CriticalLimit['kind']>(limit: CriticalLimit, kinds: K[]): limit is OfKind<K> =>
  (kinds as string[]).includes(limit.kind);
