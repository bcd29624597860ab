import type { Verdict } from './verdict';

/** What would be met but for a doubt: undetermined, and with no margin, for of what is in doubt nothing is to spare. */
export const inDoubt = (verdict: Verdict, because: string, next?: string): Verdict => ({
  ...verdict,
  kind: 'undetermined',
  margin: undefined,
  spare: undefined,
  because,
  next,
});
