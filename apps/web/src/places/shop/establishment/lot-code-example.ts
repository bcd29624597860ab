import { lotCode, patternFault } from '@larderbook/haccp';

export type LotCodeExample = { fault: string } | { first: string; second: string };

/** The codes that the first two lots of a day ("2026-05-10") would get from a pattern, or what is wrong with it. */
export function lotCodeExample(pattern: string, date: string): LotCodeExample {
  const written = pattern.trim();
  const fault = patternFault(written);
  if (fault !== undefined) return { fault };
  const codeOf = (n: number) => lotCode(written, { date, n, product: 'SMK' });
  return { first: codeOf(1), second: codeOf(2) };
}
