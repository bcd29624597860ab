import type { Finding } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { inEnglish } from '../../ui/in-english.test-data';
import { statementFor } from './statement-for';

const say = inEnglish('reviews');

const met = { about: 'control-point', kind: 'met', what: [], blocks: false } satisfies Finding;

test('of a lot without a miss the statement says that all limits were met', () => {
  expect(statementFor('SMS-26061-1', [met], say)).toBe(
    'I have reviewed the records of lot SMS-26061-1 before shipment. They are complete. ' +
      'All critical limits were met. (9 CFR 417.5(c))',
  );
});

test('of a lot with a settled miss it speaks of corrective action and disposition instead', () => {
  const statement = statementFor('SMS-26061-1', [met, { about: 'deviation', kind: 'settled', what: [], blocks: false }], say);
  expect(statement).toContain('corrective action was taken and recorded, and the disposition of the product was proper');
  expect(statement).not.toContain('All critical limits were met');
});
