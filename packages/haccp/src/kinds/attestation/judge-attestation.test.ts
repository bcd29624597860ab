import { expect, test } from 'vitest';
import { judgeAttestation } from './judge-attestation';

const label = {
  kind: 'attestation' as const,
  statement: 'Every allergen is on the label',
  source: { citation: 'an example', edition: 'none', confirmed: false },
};

test.each([
  ['yes with what was seen', { holds: true, seen: 'mustard and celery listed' }, 'met', 'yes: mustard and celery listed'],
  ['no with what was seen', { holds: false, seen: 'mustard missing' }, 'missed', 'no: mustard missing'],
  ['no without a word', { holds: false, seen: '' }, 'missed', 'no'],
  ['a bare yes', { holds: true, seen: '  ' }, 'undetermined', 'yes'],
  ['no answer', undefined, 'undetermined', 'no answer'],
])('%s', (_case, answer, kind, measured) => {
  expect(judgeAttestation(answer, label)).toMatchObject({ kind, measured, limit: label.statement });
});

test('where the moment is asked for, the record of it is enough', () => {
  const begun = { ...label, asks: 'moment' as const };
  expect(judgeAttestation({ holds: true, seen: '' }, begun)).toMatchObject({ kind: 'met', measured: 'yes' });
  expect(judgeAttestation({ holds: false, seen: '' }, begun).kind).toBe('missed');
  expect(judgeAttestation(undefined, begun).kind).toBe('undetermined');
});
