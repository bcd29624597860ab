import type { LimitThatApplies, listPublishedLimits, ReplyOf } from '@larderbook/contracts';
import { canonicalJson, type CriticalLimit } from '@larderbook/haccp';

type Published = ReplyOf<typeof listPublishedLimits>['limits'][number];
export type Offered = {
  key: string;
  title: string;
  limit: CriticalLimit;
  alsoNeeds?: string[];
  /** The shop's own set that it stands in. */
  own?: Published['own'];
};
type Given = {
  limits: readonly LimitThatApplies[];
  published: readonly Published[];
  /** Kinds that what is recorded at the control point can judge. */
  kinds: readonly CriticalLimit['kind'][];
};

export function firstForProduct({ limits, published, kinds }: Given): { own: Offered[]; others: Offered[] } {
  const own = limits.flatMap(({ rowId, title, limit, alsoNeeds, ended }): Offered[] =>
    limit && !ended && kinds.includes(limit.kind) ? [{ key: rowId, title, limit, alsoNeeds }] : [],
  );
  const taken = new Set(own.map(({ limit }) => canonicalJson(limit)));
  const others = published.filter(({ limit }) => kinds.includes(limit.kind) && !taken.has(canonicalJson(limit)));
  return { own, others };
}
