import { expect, test } from 'vitest';
import { deviationReport } from './deviation-report';
import { readBack } from './read-back.test-data';
import { aDeviation, aDeviationReport } from './samples.test-data';

test('a deviation is reported in the four parts of 9 CFR 417.3(a), each signed with its time', async () => {
  const { text, pages } = await readBack(deviationReport(aDeviationReport()));
  for (const said of [
    '2025-014', 'Lot RS-250904-1', '2 h 15 min from 130 to 80 °F against 130 → 80 °F within 1.5 h: 45 min too long.',
    '417.3(a)(1) Cause identified and eliminated', 'a hook stood in the seal', 'Nora Vale, Sep 4, 2025, 2:40 pm CDT',
    '417.3(a)(2) Control point under control again', '417.3(a)(3) Measures to prevent recurrence',
    '417.3(a)(4) No injurious or adulterated product enters commerce', 'release: 43.10 kg', 'Closed',
  ]) expect(text).toContain(said);
  expect(pages[0]?.text).toContain(`Page 1 of ${pages.length}`);
});

test('an open deviation says what is missing and that the lot is on hold', async () => {
  const deviation = aDeviation({ cause: [], dispositions: [], closed: undefined });
  const { text } = await readBack(deviationReport(aDeviationReport({ deviation })));
  expect(text).toContain('Cause identified and eliminated Not recorded.');
  expect(text).toContain('The lot is on hold.');
  expect(text).not.toContain('Closed Nora');
});

test('says when the plan prepared no action for the case', async () => {
  const { text } = await readBack(deviationReport(aDeviationReport({ preparedAction: undefined })));
  expect(text).toContain('The plan has no prepared action for this case.');
});
