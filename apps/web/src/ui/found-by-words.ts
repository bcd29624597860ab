const plain = (words: string): string => words.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** What holds every typed word somewhere in its name, whatever the order, accents and capitals. */
export function foundByWords<C extends { name: string }>(choices: readonly C[], words: string): C[] {
  const asked = plain(words).split(/\s+/).filter(Boolean);
  return choices.filter(({ name }) => asked.every((word) => plain(name).includes(word)));
}
