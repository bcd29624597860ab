import type { Lethality } from './lethality';

/** Real cooks add up to hundreds of logs, which says nothing any more. */
export const MOST_SAID = 12;

/** "about 5.5 log (Salmonella, by the meat table; model estimate)": half logs, rounded down, never without its set. */
export function sayLethality({ atLeast, set }: Pick<Lethality, 'atLeast' | 'set'>): string {
  const said = atLeast > MOST_SAID ? `> ${MOST_SAID} log` : `about ${Math.floor(atLeast * 2) / 2} log`;
  return `${said} (${set.name}; model estimate${set.source.confirmed ? '' : ', figures not confirmed'})`;
}
