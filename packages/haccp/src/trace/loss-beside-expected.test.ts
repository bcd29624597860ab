import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { lossBesideExpected } from './loss-beside-expected';

const kg = (value: number) => massOf({ value, unit: 'kg' });

test.each([
  ['the loss the formula expects', 90, 1, 0],
  ['half as much: cooked gently', 90, 0.5, 0],
  ['half as much again: cooked hard', 90, 1.5, 0],
  ['a gram more than half as much again', 90, 1.501, 0.001],
  ['a gram less than half', 90, 0.499, -0.001],
  ['nothing lost at all in cooking', 90, 0, -0.5],
  ['two kilograms more than the band', 90, 3.5, 2],
  ['nothing expected and a fiftieth gone', 100, 0.2, 0],
  ['nothing expected and a gram more than a fiftieth gone', 100, 0.201, 0.001],
  ['nothing expected and a fiftieth more', 100, -0.2, 0],
  ['water taken up, as expected', 110, -1, 0],
  ['water expected, and none taken up', 110, 0, 0.5],
  ['a dried product that lost 35 %', 65, 3.5, 0],
])('%s', (_case, yieldPercent, lost, beyond) => {
  expect(lossBesideExpected({ wentIn: kg(10), lost: kg(lost), yieldPercent }).beyond).toBe(kg(beyond));
});

test('the band is told with it', () => {
  expect(lossBesideExpected({ wentIn: kg(10), lost: kg(3), yieldPercent: 90 })).toEqual({
    least: kg(0.5),
    most: kg(1.5),
    beyond: kg(1.5),
  });
});
