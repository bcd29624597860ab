import { describe, expect, test } from 'vitest';
import { hasEnded } from './has-ended';
import type { LimitRow } from './limit-set';
import { limitsThatApply } from './limits-that-apply';
import { nitriteCountedAs } from './nitrite-counted-as';
import { faultsOfWhere, setInUse } from './set-in-use';
import { limitSets, usualSetOf } from './sets';
import { placesIn, publishedJurisdictions, type PublishedJurisdiction, type WhereItWorks } from './where-it-works';

const placesNamedBy = (rows: readonly LimitRow[]): string[] =>
  rows.flatMap(({ conditions }) => conditions.flatMap((condition) => (condition.kind === 'place' ? condition.among : [])));

test.each(publishedJurisdictions)('%s: every place a row is for can be said, and one more at most', (jurisdiction) => {
  const named = new Set(limitSets.filter((set) => set.jurisdiction === jurisdiction).flatMap(({ rows }) => placesNamedBy(rows)));
  const sayable = placesIn[jurisdiction];
  expect(sayable).toEqual(expect.arrayContaining([...named]));
  expect(sayable.filter((place) => !named.has(place) && !place.startsWith('another '))).toEqual([]);
});

describe('the set in use', () => {
  test.each<[string, WhereItWorks, string | undefined]>([
    ['nothing was said', {}, undefined],
    ['an edition without its jurisdiction', { limitSet: 'us-retail-2022' }, undefined],
    ['only the jurisdiction', { jurisdiction: 'US, retail and catering' }, usualSetOf['US, retail and catering']],
    ['an older edition', { jurisdiction: 'US, retail and catering', limitSet: 'us-retail-2013' }, 'us-retail-2013'],
    ['an edition not known here', { jurisdiction: 'Canada', limitSet: 'canada-2099' }, undefined],
  ])('%s', (_case, where, id) => {
    expect(setInUse(where)?.id).toBe(id);
  });
});

describe('where an establishment works is refused', () => {
  test.each<[string, WhereItWorks, string[]]>([
    ['not when nothing is said', {}, []],
    ['not with a place and an edition of it', { jurisdiction: 'European Union', place: 'Denmark', limitSet: 'european-union-2008' }, []],
    ['with a place of another', { jurisdiction: 'Canada', place: 'Wales' }, ['place Wales']],
    ['with an edition of another', { jurisdiction: 'Canada', limitSet: 'us-retail-2022' }, ['limitSet us-retail-2022']],
    ['with an edition that is none', { jurisdiction: 'Canada', limitSet: 'canada-2099' }, ['limitSet canada-2099']],
    ['with either before its jurisdiction', { place: 'Wales', limitSet: 'canada-2026' }, ['place Wales', 'limitSet canada-2026']],
  ])('%s', (_case, where, faults) => {
    expect(faultsOfWhere(where).map(({ field, said }) => `${field} ${said}`)).toEqual(faults);
  });
});

type Somewhere = WhereItWorks & { jurisdiction: PublishedJurisdiction };
const kingdom: Somewhere = { jurisdiction: 'United Kingdom and Ireland' };

describe('nitrite is counted', () => {
  const countedIn = (where: Somewhere) =>
    nitriteCountedAs(limitsThatApply({ product: 'cooked sausage', set: setInUse(where), ...where }).map(({ row }) => row));
  test.each<[string, Somewhere, string[]]>([
    // Regulation (EU) 2023/2108: from 9 October 2025 as NO₂ ion, before as NaNO₂
    ['as the ion', { jurisdiction: 'European Union', place: 'another member state' }, ['the nitrite ion, NO₂']],
    [
      'in two ways where a nation may keep its own',
      { jurisdiction: 'European Union', place: 'Denmark' },
      ['the nitrite ion, NO₂', 'sodium nitrite, NaNO₂'],
    ],
    ['as the salt, by the edition before', { jurisdiction: 'European Union', limitSet: 'european-union-2008' }, ['sodium nitrite, NaNO₂']],
    // 9 CFR 424.21(c) limits sodium nitrite; the Code of Australia and New Zealand counts it so in the food
    ['as the salt', { jurisdiction: 'US, inspected establishment' }, ['sodium nitrite, NaNO₂']],
    ['as the salt found in the food', { jurisdiction: 'Australia and New Zealand' }, ['sodium nitrite, NaNO₂']],
    ['as the ion in Northern Ireland', { ...kingdom, place: 'Northern Ireland' }, ['the nitrite ion, NO₂']],
    ['as the salt in Wales', { ...kingdom, place: 'Wales' }, ['sodium nitrite, NaNO₂']],
    ['nowhere in the Food Code', { jurisdiction: 'US, retail and catering' }, []],
  ])('%s', (_case, where, counted) => {
    expect(countedIn(where)).toEqual(counted);
  });
});

test.each([
  ['a row without an end', undefined, false],
  ['on its last day', '2026-11-28', false],
  ['the day after', '2026-11-27', true],
  ['within its last month', '2026-11', false],
  ['after its last year', '2025', true],
])('%s', (_case, validUntil, ended) => {
  expect(hasEnded({ validUntil }, '2026-11-28')).toBe(ended);
});
