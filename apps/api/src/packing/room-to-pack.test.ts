import { massOf } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { roomToPack } from './room-to-pack';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const holds = (held: Partial<Parameters<typeof roomToPack>[0]> = {}) => ({
  wentIn: kg(50),
  removed: 0n,
  condemned: 0n,
  reworked: 0n,
  packed: 0n,
  shipped: 0n,
  ...held,
});
const percent = (yielded: number) => BigInt(yielded * 10_000);

test.each<[string, Parameters<typeof roomToPack>[0], number, bigint]>([
  ['all that went in, whatever the formula is expected to lose', holds(), 85, kg(50)],
  ['at exactly 100 %', holds(), 100, kg(50)],
  ['more, when the formula takes up water', holds(), 120, kg(60)],
  [
    'less what was removed, condemned and reworked',
    holds({ removed: kg(4), condemned: kg(3), reworked: kg(2) }),
    85,
    kg(41),
  ],
  ['less what is packed', holds({ packed: kg(50) }), 85, 0n],
  ['below zero when more is packed than there was', holds({ packed: kg(51) }), 85, kg(-1)],
])('room to pack is %s', (_case, held, expectedYield, room) => {
  expect(roomToPack(held, percent(expectedYield))).toBe(room);
});
