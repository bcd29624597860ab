import type { InputOf, OwnLimitRow, recordOwnLimits } from '@larderbook/contracts';

type OwnLimits = Omit<InputOf<typeof recordOwnLimits>, 'ownSetId'>;

/** Where the support of an invented process is filed; the figures are for tests alone. */
const source = { citation: 'Validation of our smokehouse, report 7', edition: '2026', confirmed: true };

/** One time at one temperature: 62.8 °C for 10 minutes. */
export const aDwellRow = (fields: Partial<OwnLimitRow> = {}): OwnLimitRow => ({
  rowId: 'smoked-sausage-core',
  title: 'Core of smoked sausage',
  purpose: 'cooking',
  limit: {
    kind: 'dwell',
    rows: [{ at: { '°F': 14_500, '°C': 6280 }, seconds: 600 }],
    longestGapSeconds: 900,
    source,
  },
  paragraph: 'Binder 3, tab B',
  force: 'industry',
  known: 'read in the source',
  validFrom: '2026-01-15',
  conditions: [{ kind: 'statement', says: 'in the small smokehouse, fan at full speed' }],
  ...fields,
});

/** The same with the core held for so many seconds. */
export const heldFor = (seconds: number, fields: Partial<OwnLimitRow> = {}): OwnLimitRow => {
  const row = aDwellRow(fields);
  if (row.limit.kind !== 'dwell') throw new Error('The row is no time held at a temperature');
  return { ...row, limit: { ...row.limit, rows: [{ at: { '°F': 14_500, '°C': 6280 }, seconds }] } };
};

/** An edition of limits of one's own. */
export const ownLimits = (fields: Partial<OwnLimits> = {}): OwnLimits => ({
  title: 'Our smokehouse',
  edition: '2026-1',
  validFrom: '2026-02-01',
  rows: [aDwellRow()],
  ...fields,
});
