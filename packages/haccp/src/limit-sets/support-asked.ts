import type { FigureLimit } from '../kinds/figure/figure-limit';
import type { CodedAs } from '../limits/coded';
import type { CriticalLimit } from '../limits/limit';
import { isSaid } from '../limits/support';
import { figureOf, withPublishedConditions } from './published-conditions';
import { limitSets } from './sets';

export type SupportAsked = {
  /** The figure was not read: where the adopter has read it, or support of their own. */
  figure: boolean;
  /** Support that the source asks for: a gap of the guideline in force, or support of their own. */
  option: string[];
};

/** Not read in the source: no tick in a plan can confirm one. */
const notRead = new Set(
  limitSets.flatMap(({ rows }) => rows.filter(({ limit }) => !limit.source.confirmed).map(({ limit }) => figureOf(limit))),
);

export function supportAsked(limit: CriticalLimit | FigureLimit): SupportAsked {
  const published = withPublishedConditions(limit).conditions ?? [];
  const own = ('conditions' in limit && limit.conditions) || [];
  const option = [...published, ...own].flatMap((one) => (one.kind === 'support' ? [one.says] : []));
  return { figure: !limit.source.confirmed || notRead.has(figureOf(limit)), option: [...new Set(option)] };
}

export function supportLacking(limit: CriticalLimit | FigureLimit): CodedAs<'figure-not-read' | 'option-not-supported'>[] {
  const { figure, option } = supportAsked(limit);
  const { citation, support: { read, gap, own } = {} } = limit.source;
  const isFigureOpen = figure && !isSaid(read) && !isSaid(own);
  const isOptionOpen = option.length > 0 && !isSaid(gap) && !isSaid(own);
  return [
    ...(isFigureOpen ? [{ code: 'figure-not-read', figures: { citation } } as const] : []),
    ...(isOptionOpen ? option.map((asked) => ({ code: 'option-not-supported', figures: { asked } }) as const) : []),
  ];
}
