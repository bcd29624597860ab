import type { LimitRowShown } from '@larderbook/contracts';

/** Every word must occur in title, figure, paragraph or source, whatever its case. */
export function matching(rows: readonly LimitRowShown[], sought: string): LimitRowShown[] {
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
  return rows.filter(({ title, purpose, says, paragraph, source }) => {
    const text = [title, purpose, ...says, paragraph, source.citation].join(' ').toLowerCase();
    return words.every((word) => text.includes(word));
  });
}

export function byPurpose(rows: readonly LimitRowShown[]): [LimitRowShown['purpose'], LimitRowShown[]][] {
  const groups = new Map<LimitRowShown['purpose'], LimitRowShown[]>();
  for (const row of rows) groups.set(row.purpose, [...(groups.get(row.purpose) ?? []), row]);
  return [...groups];
}
