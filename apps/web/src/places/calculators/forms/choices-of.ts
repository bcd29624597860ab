/** Choices that are called what they are. */
export const choicesOf = (values: readonly string[]) => values.map((value) => ({ value, name: value }));
