import { isSaid, isUnconfirmed, type Source } from '@larderbook/haccp';
import { useSay } from './voice';

/** Where a figure comes from and what the plan says supports it, in one line; an unconfirmed figure says so. */
export function SourceLine({ source }: { source: Source }) {
  const say = useSay('explaining');
  const { citation, edition, support: { read, gap, own } = {} } = source;
  const cited = [citation, edition, isUnconfirmed(source) && say('not-confirmed')].filter(Boolean).join(', ');
  const support = [
    isSaid(read) && say('source-read', { words: read.trim() }),
    isSaid(gap) && say('source-gap', { words: gap.trim() }),
    isSaid(own) && say('source-own', { words: own.trim() }),
  ];
  return [cited, ...support.filter(Boolean)].join('. ');
}
