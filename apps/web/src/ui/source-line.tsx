import { isUnconfirmed, type Source } from '@larderbook/haccp';
import { useLimits } from './use-tell';
import { useSay } from './voice';

/** An unconfirmed figure says so. */
export function SourceLine({ source }: { source: Source }) {
  const say = useSay('explaining');
  const { saySupport } = useLimits();
  const { citation, edition } = source;
  const cited = [citation, edition, isUnconfirmed(source) && say('not-confirmed')].filter(Boolean).join(', ');
  return [cited, ...saySupport(source)].join('. ');
}
