import type { Value } from './value';

/**
 * A missing or misspelt parameter is a type error where the message is said. `{count, plural, …}` and `{most, number}`
 * take a number, `{kind, select, …}` a word, `{name}` a value.
 */
export type ParametersOf<Text extends string> = { [Found in Argument<Text> as Found['name']]: Found['takes'] };

/** The text inside a plural has a space, so it is no argument. */
type Argument<Text extends string, Found extends AnyArgument = never> = Text extends `${string}{${infer Rest}`
  ? Argument<Rest, Found | Named<Rest extends `${infer Head}}${string}` ? Head : ''>>
  : Found;

type AnyArgument = { name: string; takes: unknown };

type Named<Head extends string> = Head extends `${infer Name}, plural, ${string}`
  ? { name: Name; takes: number }
  : Head extends `${infer Name}, number`
    ? { name: Name; takes: number }
    : Head extends `${infer Name}, select, ${string}`
      ? { name: Name; takes: string }
      : Head extends '' | `${string}${' ' | '#' | '<' | '.'}${string}`
        ? never
        : { name: Head; takes: Value };
