const formats = new Map<string, Intl.NumberFormat>();

/** A decimal number given as text, every digit of it kept: "1234.50" is "1,234.50" where thousands are grouped so. */
export function writeNumber(decimal: string, locale: string): string {
  const decimals = /\.(\d+)$/.exec(decimal)?.[1]?.length ?? 0;
  const key = `${locale} ${decimals}`;
  const format = formats.get(key) ?? new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  formats.set(key, format);
  // a number as text is written digit by digit; the type of older libraries knows numbers alone
  return format.format(decimal as unknown as number);
}
