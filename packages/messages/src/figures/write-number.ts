const formats = new Map<string, Intl.NumberFormat>();

/** Keeps every digit of the text: "1234.50" becomes "1,234.50". */
export function writeNumber(decimal: string, locale: string): string {
  const decimals = /\.(\d+)$/.exec(decimal)?.[1]?.length ?? 0;
  const key = `${locale} ${decimals}`;
  const format = formats.get(key) ?? new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  formats.set(key, format);
  // the type of older libraries does not know numbers as text
  return format.format(decimal as unknown as number);
}
