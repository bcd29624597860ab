import { expect, test } from 'vitest';
import { aLot, at, ms } from '../test-lots/a-lot';
import { aPoint, cooling } from '../test-lots/a-point';
import { bandsOf } from './lanes';

const chill = { name: 'Chill', takenAs: 'curve' as const, limits: [cooling] };
const band = (label: string, from: string, times: { end?: string; deadline?: string }) => ({
  limitId: 'l',
  label,
  startAt: ms(from),
  endAt: times.end ? ms(times.end) : undefined,
  deadline: times.deadline ? ms(times.deadline) : undefined,
  kind: times.end ? ('met' as const) : ('running' as const),
});
const lotWith = (...bands: ReturnType<typeof band>[]) => aLot({ controlPoints: [aPoint(chill, { bands })] });

test('stages that overlap lie side by side, one that follows takes the free lane', () => {
  const lot = lotWith(
    band('whole', '12:00', { deadline: '18:00' }),
    band('first', '12:00', { end: '13:00' }),
    band('second', '13:00', { deadline: '18:00' }),
  );
  expect(bandsOf(lot, ms('14:00')).map(({ label, lane }) => [label, lane])).toEqual([
    ['whole', 0],
    ['first', 1],
    ['second', 1],
  ]);
});

test('a running band reaches to its deadline and is filled up to now', () => {
  expect(bandsOf(lotWith(band('first', '12:00', { deadline: '13:30' })), ms('12:40'))).toMatchObject([
    { to: ms('13:30'), spentTo: ms('12:40') },
  ]);
});

test('a band that is overdue reaches to now', () => {
  expect(bandsOf(lotWith(band('first', '12:00', { deadline: '13:30' })), ms('14:00'))).toMatchObject([
    { to: ms('14:00'), spentTo: ms('14:00') },
  ]);
});

test('a band whose stage was finished without reaching its bound ends there', () => {
  const lot = aLot({
    controlPoints: [aPoint(chill, { endedAt: at('13:10'), bands: [band('first', '12:00', { deadline: '13:30' })] })],
  });
  expect(bandsOf(lot, ms('18:00'))).toMatchObject([{ to: ms('13:10'), spentTo: ms('13:10') }]);
});
