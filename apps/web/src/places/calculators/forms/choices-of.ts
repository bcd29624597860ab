import { codeOf } from '@larderbook/messages';

/** The values of a closed set as choices, each told by its code. */
export const choicesOf = <const Of extends string, const Value extends string>(of: Of, values: readonly Value[]) =>
  values.map((value) => ({ value, name: codeOf(of, value) }));
