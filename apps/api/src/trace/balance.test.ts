import { describe, expect, test } from 'vitest';
import { massOf } from '@larderbook/haccp';
import { balanceOfLot, balanceOfReceipt } from './balance';
import type { Movement } from './movements.queries';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const moved = (happened: Partial<Record<Movement, number>>) => (what: Movement) => kg(happened[what] ?? 0);
const stock = (packed: number, shipped = 0, condemned = 0, opened = 0) => ({
  packed: kg(packed),
  shipped: kg(shipped),
  aside: { condemned: kg(condemned), opened: kg(opened) },
});

describe('a delivery', () => {
  test('half of which was used still lies in the cold store', () => {
    expect(balanceOfReceipt(moved({ wentIn: 40, used: 20 }))).toMatchObject({
      onHand: kg(20),
      unexplained: 0n,
      percentAccounted: '100',
      fault: undefined,
    });
  });

  test('of which a count found less names the difference', () => {
    expect(balanceOfReceipt(moved({ wentIn: 40, used: 20, counted: 0.5 }))).toMatchObject({
      onHand: kg(19.5),
      unexplained: kg(0.5),
      percentAccounted: '98.75',
      fault: 'unexplained',
    });
  });

  test('of which more was used than came is a fault', () => {
    expect(balanceOfReceipt(moved({ wentIn: 40, used: 41 }))).toMatchObject({
      onHand: 0n,
      unexplained: kg(-1),
      percentAccounted: '102.5',
      fault: 'more-than-went-in',
    });
  });

  test('that went back whole is accounted for', () => {
    expect(balanceOfReceipt(moved({ wentIn: 40, removed: 40 }))).toMatchObject({ onHand: 0n, percentAccounted: '100' });
  });
});

describe('a lot', () => {
  test('in work has everything on hand that was not trimmed off', () => {
    expect(balanceOfLot(moved({ wentIn: 50, removed: 2 }))).toMatchObject({
      onHand: kg(48),
      percentAccounted: '100',
      fault: undefined,
    });
  });

  test('that was packed names the loss nobody recorded', () => {
    expect(balanceOfLot(moved({ wentIn: 50, removed: 2 }), stock(40, 30))).toMatchObject({
      onHand: kg(10),
      unexplained: kg(8),
      percentAccounted: '84',
      fault: 'unexplained',
    });
  });

  test('with its loss recorded adds up', () => {
    expect(balanceOfLot(moved({ wentIn: 50, removed: 10 }), stock(40, 30))).toMatchObject({
      onHand: kg(10),
      unexplained: 0n,
      percentAccounted: '100',
    });
  });

  test('condemned in its packages is not counted twice', () => {
    expect(balanceOfLot(moved({ wentIn: 50, removed: 10, condemned: 40 }), stock(40, 0, 40))).toMatchObject({
      onHand: 0n,
      percentAccounted: '100',
    });
  });

  test('reworked out of its packages is not counted twice', () => {
    expect(balanceOfLot(moved({ wentIn: 50, removed: 10, used: 15 }), stock(40, 25, 0, 15))).toMatchObject({
      onHand: 0n,
      unexplained: 0n,
      percentAccounted: '100',
    });
  });

  test('packed heavier than it was made is a fault', () => {
    expect(balanceOfLot(moved({ wentIn: 50 }), stock(51))).toMatchObject({
      percentAccounted: '102',
      fault: 'more-than-went-in',
    });
  });
});
