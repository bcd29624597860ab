import type { Finding } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

/**
 * 9 CFR 417.5(c): all records are complete and all critical limits met or, where not, corrective action was taken,
 * including the proper disposition of product. The statement says no more than was found.
 */
export function statementFor(lot: string, findings: readonly Finding[], say: SayOf<'reviews'>): string {
  const isSettled = findings.some(({ kind, about }) => kind === 'settled' && (about === 'control-point' || about === 'deviation'));
  return say(isSettled ? 'statement-settled' : 'statement-met', { lot });
}
