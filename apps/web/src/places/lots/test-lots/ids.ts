const given = new Map<string, string>();

/** A UUIDv7 for each name, always the same one. */
export const ids = {
  of(name: string): string {
    const known = given.get(name) ?? `01975000-0000-7000-8000-${String(given.size + 1).padStart(12, '0')}`;
    given.set(name, known);
    return known;
  },
};
