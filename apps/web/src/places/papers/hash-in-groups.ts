/** Groups of eight let a person compare the digest with a printed one. */
export const hashInGroups = (hash: string): string => (hash.match(/.{1,8}/g) ?? []).join(' ');
