import type { Finding } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

/**
 * 9 CFR 417.5(c): the records are complete and all critical limits were met or, where not, corrective action was taken,
 * including the proper disposition of product. Says no more than was found.
 */
export function statementFor(lot: string, findings: readonly Finding[], say: SayOf<'reviews'>): string {
  const isSettled = findings.some(({ kind, about }) => kind === 'settled' && (about === 'control-point' || about === 'deviation'));
  return say(isSettled ? 'statement-settled' : 'statement-met', { lot });
}
