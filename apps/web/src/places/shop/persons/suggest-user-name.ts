const longest = 40;

/** "Mara Quill" is mara.quill; empty when nothing the contract allows is left. */
export function suggestUserName(name: string): string {
  const plain = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.split(/[^a-z0-9]+/).filter(Boolean);
  const suggested = words.join('.').slice(0, longest).replace(/\.$/, '');
  return suggested.length < 3 ? '' : suggested;
}
