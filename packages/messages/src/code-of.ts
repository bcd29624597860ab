/** "ham, pumped" is "ham-pumped". */
type Kebab<Text extends string> = Text extends `${infer Head}, ${infer Tail}`
  ? `${Kebab<Head>}-${Kebab<Tail>}`
  : Text extends `${infer Head} ${infer Tail}`
    ? `${Kebab<Head>}-${Kebab<Tail>}`
    : Lowercase<Text>;

/** `codeOf('species', 'other poultry')` is "species-other-poultry". */
export const codeOf = <const Of extends string, const Value extends string>(of: Of, value: Value) =>
  `${of}-${value.replace(/,? /g, '-').toLowerCase()}` as `${Of}-${Kebab<Value>}`;
