import type { ParametersOf } from './parameters';
import type { Words } from './say';

/**
 * A code that is missing, left over or misspelt is a type error, and so is any parameter that differs from the English
 * message.
 */
export const translated =
  <English extends Words>() =>
  <const Own extends Same<English, Own>>(own: Own): Own =>
    own;

type Same<English extends Words, Own> = {
  readonly [Code in keyof English]: Code extends keyof Own
    ? Own[Code] extends string
      ? keyof ParametersOf<Own[Code]> extends keyof ParametersOf<English[Code]>
        ? keyof ParametersOf<English[Code]> extends keyof ParametersOf<Own[Code]>
          ? string
          : `says nothing of {${Exclude<keyof ParametersOf<English[Code]>, keyof ParametersOf<Own[Code]>> & string}}`
        : `has no {${Exclude<keyof ParametersOf<Own[Code]>, keyof ParametersOf<English[Code]>> & string}}`
      : string
    : string;
} & { readonly [Code in Exclude<keyof Own, keyof English>]: never };
