/** The value that this part of all values does not exceed; `part` between 0 and 1. */
export function percentile(values: readonly number[], part: number): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.min(sorted.length - 1, Math.ceil(sorted.length * part) - 1)] ?? NaN;
}

export const latencyOf = (milliseconds: readonly number[]) => ({
  p50: percentile(milliseconds, 0.5),
  p99: percentile(milliseconds, 0.99),
});
