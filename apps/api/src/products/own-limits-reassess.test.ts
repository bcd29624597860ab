import type { LimitSet } from '@larderbook/haccp';
import { describe, expect, test } from 'vitest';
import { english, englishLimits } from '../platform/in-english.test-data';
import { ownOnOffer } from './own-limits-on-offer';
import type { OwnEdition } from './own-limits.queries';
import { ownReasons as reasonsOf } from './own-limits-reassess';
import { reasonsIn } from './reasons-in';
import { listStarters } from './starter-plans';

const ownReasons = (content: Parameters<typeof reasonsOf>[0], own: OwnEdition[], at: Date) =>
  reasonsOf(content, own, at, reasonsIn(english));
const now = new Date('2026-11-28T09:00:00Z');
const source = { citation: 'Our validation, report 7', edition: '2026', confirmed: true };
const row = (seconds: number, id = 'core'): LimitSet['rows'][number] => ({
  id,
  title: 'Core of smoked sausage',
  purpose: 'cooking',
  paragraph: 'Binder 3',
  force: 'industry',
  known: 'read in the source',
  validFrom: '2026',
  conditions: [],
  limit: { kind: 'dwell', rows: [{ at: { '°C': 6280 }, seconds }], longestGapSeconds: 900, source },
});
const edition = (name: string, rows: LimitSet['rows'], more: Partial<OwnEdition> = {}): OwnEdition => ({
  id: name,
  jurisdiction: 'own',
  title: 'Our smokehouse',
  edition: name,
  validFrom: '2026-02-01',
  rows,
  own: { recordedAt: '', recordedBy: '' },
  ...more,
});
const [first, second] = [edition('1', [row(600)]), edition('2', [row(720)], { replaces: '1' })];

/** A starter plan whose first control point is judged by this row. */
function planOn({ limit }: LimitSet['rows'][number]) {
  const [content] = listStarters(english).starters.map((starter) => starter.content);
  const [point] = content?.controlPoints ?? [];
  if (!content || !point) throw new Error('There is no plan to start from');
  return { ...content, controlPoints: [{ ...point, name: 'Cook', limits: [{ limitId: 'any', limit }] }] };
}

describe('a plan on limits of one’s own', () => {
  test('is to be reassessed when a newer edition holds another figure, with both figures', () => {
    expect(ownReasons(planOn(row(600)), [second, first], now)).toEqual([
      'Cook: built on Our smokehouse, edition 1. Our smokehouse, edition 2, ' +
        'prints 12 min for 62.8 °C instead of 10 min. Reassess the plan.',
    ]);
  });

  test('is not while its edition is the latest, the newer one prints the same, or does not count yet', () => {
    expect(ownReasons(planOn(row(720)), [second, first], now)).toEqual([]);
    expect(ownReasons(planOn(row(600)), [edition('2', [row(600)], { replaces: '1' }), first], now)).toEqual([]);
    const later = { ...second, validFrom: '2026-11-29' };
    expect(ownReasons(planOn(row(600)), [later, first], now)).toEqual([]);
  });

  test('is when the newer edition no longer holds the figure', () => {
    const without = edition('2', [row(60, 'other')], { replaces: '1' });
    expect(ownReasons(planOn(row(600)), [without, first], now)).toEqual([
      'Cook: built on Our smokehouse, edition 1. Our smokehouse, edition 2, no longer holds it. Reassess the plan.',
    ]);
  });

  test('is asked once for what two editions hold alike and a third changes', () => {
    const third = edition('3', [row(900)], { replaces: '2' });
    const said = ownReasons(planOn(row(600)), [third, edition('2', [row(600)], { replaces: '1' }), first], now);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(/^Cook: built on Our smokehouse, edition 2\. Our smokehouse, edition 3, prints 15 min/);
  });
});

test('a new plan is offered what counts: neither what was replaced, nor what has ended, nor what is to come', () => {
  const ended = { ...row(1, 'ended'), validUntil: '2026-11-27' };
  const offered = (editions: OwnEdition[]) => ownOnOffer(editions, '2026-11-28', englishLimits).map(({ key }) => key);
  expect(offered([edition('2', [row(720), ended], { replaces: '1' }), first])).toEqual(['2/core']);
  expect(offered([{ ...second, validFrom: '2026-12-01' }, first])).toEqual(['1/core']);
  expect(ownOnOffer([second], '2026-11-28', englishLimits)).toMatchObject([
    { title: 'Core of smoked sausage', own: { title: 'Our smokehouse', edition: '2' } },
  ]);
});
