/** "36.4 °F", "pH 5.21", "aw 0.838"; a ratio has no unit. */
export function formatRead({ value, unit }: { value: number | string; unit: string }): string {
  if (unit === 'pH' || unit === 'aw') return `${unit} ${value}`;
  return unit === 'ratio' || unit === '' ? `${value}` : `${value} ${unit}`;
}
