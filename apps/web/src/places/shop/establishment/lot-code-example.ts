import { lotCode, patternFault, type LotCodeFault } from '@larderbook/haccp';

export type LotCodeExample = { fault: LotCodeFault } | { first: string; second: string };

export function lotCodeExample(pattern: string, date: string): LotCodeExample {
  const written = pattern.trim();
  const fault = patternFault(written);
  if (fault) return { fault };
  const [first, second] = [1, 2].map((n) => lotCode(written, { date, n, product: 'SMK' })) as [string, string];
  return { first, second };
}
