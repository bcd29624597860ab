import { lotCode, patternFault } from '@larderbook/haccp';

export type LotCodeExample = { fault: string } | { first: string; second: string };

export function lotCodeExample(pattern: string, date: string): LotCodeExample {
  const written = pattern.trim();
  const fault = patternFault(written);
  if (fault !== undefined) return { fault };
  const codeOf = (n: number) => lotCode(written, { date, n, product: 'SMK' });
  return { first: codeOf(1), second: codeOf(2) };
}
