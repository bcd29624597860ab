type Chained = { id: string; amendsId: string | null };

/**
 * The first reading of each chain of corrections: a miss belongs to what was measured, however often it was corrected.
 */
export function rootsOf(readings: readonly Chained[]): ReadonlyMap<string, string> {
  const corrects = new Map(readings.map(({ id, amendsId }) => [id, amendsId]));
  const rootOf = (id: string): string => {
    const before = corrects.get(id);
    return before ? rootOf(before) : id;
  };
  return new Map(readings.map(({ id }) => [id, rootOf(id)]));
}
