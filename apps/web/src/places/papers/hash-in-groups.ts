/** A digest in groups of eight letters, so that a person can compare it with a printed one without losing the place. */
export const hashInGroups = (hash: string): string => (hash.match(/.{1,8}/g) ?? []).join(' ');
