/** Lines break at spaces and dashes where they can; what does not fit ends in "…". */
export function wrapWords(text: string, most: number, lines: number): string[] {
  const wrapped: string[] = [];
  let rest = text.trim();
  while (rest.length > 0 && wrapped.length < lines) {
    if (rest.length <= most) return [...wrapped, rest];
    const isLast = wrapped.length === lines - 1;
    const cut = isLast ? most - 1 : breakAt(rest, most);
    wrapped.push(isLast ? `${rest.slice(0, cut).trimEnd()}…` : rest.slice(0, cut).trimEnd());
    rest = rest.slice(cut).trimStart();
  }
  return wrapped;
}

/** Breaks a word only when it is longer than the line. */
function breakAt(text: string, most: number): number {
  const space = text.lastIndexOf(' ', most);
  const dash = text.lastIndexOf('-', most - 1) + 1;
  return Math.max(space, dash) > 0 ? Math.max(space, dash) : most;
}
