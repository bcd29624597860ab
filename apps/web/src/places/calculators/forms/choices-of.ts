import { codeOf } from '@larderbook/messages';

export const choicesOf = <const Of extends string, const Value extends string>(of: Of, values: readonly Value[]) =>
  values.map((value) => ({ value, name: codeOf(of, value) }));
