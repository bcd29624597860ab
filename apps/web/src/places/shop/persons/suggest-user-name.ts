const longest = 40;

/** A user name made of a person's name, as the contract allows one: "Mara Quill" is mara.quill. Empty when nothing usable is left. */
export function suggestUserName(name: string): string {
  const plain = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.split(/[^a-z0-9]+/).filter(Boolean);
  const suggested = words.join('.').slice(0, longest).replace(/\.$/, '');
  return suggested.length < 3 ? '' : suggested;
}
