import type { Finding } from '@larderbook/contracts';

/**
 * What the reviewer signs, as 9 CFR 417.5(c) asks: that the records are complete, that all critical limits were met
 * and, where not, that corrective action was taken, including the proper disposition of product. Says no more than was
 * found.
 */
export function statementFor(lotCode: string, findings: readonly Finding[]): string {
  const settled = findings.some(({ kind, about }) => kind === 'settled' && (about === 'control-point' || about === 'deviation'));
  const limits = settled
    ? 'Where a limit was not met, or something unforeseen was seen, corrective action was taken and ' +
      'recorded, and the disposition of the product was proper; all other critical limits were met.'
    : 'All critical limits were met.';
  return `I have reviewed the records of lot ${lotCode} before shipment. They are complete. ${limits} (9 CFR 417.5(c))`;
}
