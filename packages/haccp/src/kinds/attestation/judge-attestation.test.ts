import { expect, test } from 'vitest';
import { judgeAttestation } from './judge-attestation';

const label = {
  kind: 'attestation' as const,
  statement: 'Every allergen is on the label',
  source: { citation: 'an example', edition: 'none', confirmed: false },
};

test.each([
  ['yes with what was seen', { holds: true, seen: 'mustard and celery listed' }, 'met', 'attested-yes', 'mustard and celery listed'],
  ['no with what was seen', { holds: false, seen: 'mustard missing' }, 'missed', 'attested-no', 'mustard missing'],
  ['no without a word', { holds: false, seen: '' }, 'missed', 'attested-no', undefined],
  ['a bare yes', { holds: true, seen: '  ' }, 'undetermined', 'attested-bare', undefined],
  ['no answer', undefined, 'undetermined', 'not-attested', undefined],
])('%s', (_case, answer, kind, finding, seen) => {
  expect(judgeAttestation(answer, label)).toEqual({ kind, finding, figures: seen ? { seen } : {}, notes: [] });
});

test('where the moment is asked for, the record of it is enough', () => {
  const begun = { ...label, asks: 'moment' as const };
  expect(judgeAttestation({ holds: true, seen: '' }, begun)).toMatchObject({ kind: 'met', finding: 'attested-moment' });
  expect(judgeAttestation({ holds: false, seen: '' }, begun).kind).toBe('missed');
  expect(judgeAttestation(undefined, begun).kind).toBe('undetermined');
});
