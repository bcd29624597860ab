import { RULES_VERSION, type Verdict } from '@larderbook/haccp';

/** What a delivery, a check or a deviation keeps of its verdict: what was found, and by which rules. */
export const keepVerdict = (verdict: Verdict) => ({ rulesVersion: RULES_VERSION, ...verdict });

export function verdictAsKept(kept: unknown): Verdict {
  const { rulesVersion: _, ...verdict } = kept as ReturnType<typeof keepVerdict>;
  return verdict;
}
