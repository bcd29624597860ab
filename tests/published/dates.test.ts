import { expect, test } from 'vitest';
import { useBy } from '@larderbook/haccp';

/** FDA Food Code 2022, 3-501.17: 7 days at or below 41 °F, the day of preparation being day 1. */
test('prepared on 1 June and kept at 41 °F: use by 7 June', () => {
  expect(useBy('2026-06-01', 7 - 1)).toBe('2026-06-07');
});

/** 3-502.12(B): 30 calendar days of packing; the code does not say whether the day of packing is the first. */
test('packed on 1 June: 30 June when that day is counted, which is the earlier, 1 July when it is not', () => {
  expect([useBy('2026-06-01', 30 - 1), useBy('2026-06-01', 30)]).toEqual(['2026-06-30', '2026-07-01']);
});

/** Regulation (EU) 1169/2011, Annex X: packed on 13 November with 12 days of life. */
test('packed on 13 November with 12 days of life: use by 25 November', () => {
  expect(useBy('2026-11-13', 12)).toBe('2026-11-25');
});
