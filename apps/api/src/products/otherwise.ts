import { differencesOf, type LimitRow } from '@larderbook/haccp';

/** What another set prints otherwise on the matter of a row, the first of it; undefined when it prints the same. */
export function otherwise(row: LimitRow, match: LimitRow): string | undefined {
  const [first] = differencesOf(row, match).filter(({ what }) => what !== 'known' && what !== 'force');
  if (!first) return undefined;
  const doubt = match.limit.source.confirmed ? '' : ', as far as is known';
  if (first.what === 'conditions') return `asks for other conditions${doubt}`;
  if (first.what === 'figure') return `prints ${first.there} for it instead of ${first.here}${doubt}`;
  if (first.there === 'absent') return `has no row for ${first.what}${doubt}`;
  return `prints ${first.there} for ${first.what} instead of ${first.here}${doubt}`;
}
