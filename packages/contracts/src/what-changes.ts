/** Reads of what is described once for all lots: no record of the day's work changes their answers. */
export const describedReads: readonly string[] = [
  '/session',
  '/people',
  '/suppliers',
  '/items',
  '/customers',
  '/instruments',
  '/products',
  '/products/:productId/limits',
  '/plans/:planId',
  '/control-points',
  '/published-limits',
  '/limit-sets',
  '/limit-set-rows',
  '/limit-set-differences',
  '/limit-set-rows-to-take',
];

/** First words of the addresses at which the day's work is recorded. A void is none: it can take back a check of an instrument. */
const dayWrites: ReadonlySet<string> = new Set([
  'receipts',
  'receipt-corrections',
  'lots',
  'inputs',
  'weighings',
  'removals',
  'readings',
  'stage-ends',
  'clarifications',
  'deviations',
  'corrective-actions',
  'dispositions',
  'disposition-corrections',
  'destructions',
  'deviation-closings',
  'closings-taken-back',
  'reviews',
  'reviews-taken-back',
  'packings',
  'shipments',
]);

/** Whether what was written there leaves the answers of `describedReads` as they are; in doubt it does not. */
export const isDayWrite = (path: string): boolean => dayWrites.has(path.split('/')[1] ?? '');
