/** Groups of eight letters let a person compare it with a printed one. */
export const hashInGroups = (hash: string): string => (hash.match(/.{1,8}/g) ?? []).join(' ');
