type Chained = { id: string; amendsId: string | null };

/** A miss belongs to the first reading of its chain of corrections. */
export function rootsOf(readings: readonly Chained[]): ReadonlyMap<string, string> {
  const corrects = new Map(readings.map(({ id, amendsId }) => [id, amendsId]));
  const rootOf = (id: string): string => {
    const before = corrects.get(id);
    return before ? rootOf(before) : id;
  };
  return new Map(readings.map(({ id }) => [id, rootOf(id)]));
}

/** A correction arrives when the first of its chain did. */
export function arrivalsOf<At>(readings: readonly (Chained & { recordedAt: At })[]): ReadonlyMap<string, At> {
  const roots = rootsOf(readings);
  const keptAt = new Map(readings.map(({ id, recordedAt }) => [id, recordedAt]));
  return new Map(readings.map(({ id, recordedAt }) => [id, keptAt.get(roots.get(id) ?? id) ?? recordedAt]));
}
