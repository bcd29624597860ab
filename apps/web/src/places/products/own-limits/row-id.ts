/**
 * "Core of ham (whole)" is "core-of-ham-whole". The id means the same matter from edition to edition: it is made once
 * and taken by no other row.
 */
export function rowIdOf(title: string, taken: ReadonlySet<string>): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');
  const id = plain.slice(0, 60).replace(/^-+|-+$/g, '') || 'figure';
  if (!taken.has(id)) return id;
  let next = 2;
  while (taken.has(`${id}-${next}`)) next += 1;
  return `${id}-${next}`;
}
