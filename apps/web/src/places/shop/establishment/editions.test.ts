import { expect, test } from 'vitest';
import { editionsOf, titleOf, editionInUse } from './editions';

const set = (setId: string, jurisdiction: string, edition: string, usual = false) => ({
  setId,
  jurisdiction,
  title: `${jurisdiction}, Code ${edition}`,
  edition,
  validFrom: edition,
  usual,
});
const sets = [
  set('retail-2013', 'US, retail and catering', '2013'),
  set('canada', 'Canada', '2026', true),
  set('retail-2022', 'US, retail and catering', '2022', true),
  set('own', 'own', '2026'),
];

test('only the editions of a jurisdiction are offered, the newest first', () => {
  expect(editionsOf(sets, 'US, retail and catering').map(({ setId }) => setId)).toEqual(['retail-2022', 'retail-2013']);
});

test('an edition is said once', () => {
  expect(titleOf({ title: 'Food Code 2022', edition: '2022' })).toBe('Food Code 2022');
  expect(titleOf({ title: 'Canada', edition: '2026' })).toBe('Canada, 2026');
});

test.each([
  [
    'the one that was chosen',
    { jurisdiction: 'US, retail and catering', limitSet: 'retail-2013' },
    { edition: 'US, retail and catering, Code 2013', isUsual: false },
  ],
  ['the usual one where none was chosen', { jurisdiction: 'Canada' }, { edition: 'Canada, Code 2026', isUsual: true }],
  ['none where nothing was said', {}, undefined],
  ['none that is not known', { jurisdiction: 'Canada', limitSet: 'canada-2099' }, undefined],
] as const)('in use is %s', (_case, where, said) => {
  expect(editionInUse(sets, where)).toEqual(said);
});
