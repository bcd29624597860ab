import { massOf } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import type { LotHolds } from '../lots/lot-holds.queries';
import { roomToPack } from './room-to-pack';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const holds = (held: Partial<LotHolds> = {}, aside: Partial<LotHolds['aside']> = {}): LotHolds => ({
  wentIn: kg(50),
  removed: 0n,
  condemned: 0n,
  destroyed: 0n,
  reworked: 0n,
  packed: 0n,
  shipped: 0n,
  aside: { condemned: 0n, toRework: 0n, opened: 0n, pending: 0n, ...aside },
  ...held,
});
const percent = (yielded: number) => BigInt(yielded * 10_000);

test.each<[string, LotHolds, number, bigint]>([
  ['all that went in, whatever the formula is expected to lose', holds(), 85, kg(50)],
  ['at exactly 100 %', holds(), 100, kg(50)],
  ['more, when the formula takes up water', holds(), 120, kg(60)],
  ['less what was removed, condemned and reworked', holds({ removed: kg(4), condemned: kg(3), reworked: kg(2) }), 85, kg(41)],
  ['less what is packed', holds({ packed: kg(50) }), 85, 0n],
  ['less what is loose and to be reworked', holds({}, { pending: kg(10) }), 85, kg(40)],
  ['not less what was condemned in packages', holds({ packed: kg(20), condemned: kg(5) }, { condemned: kg(5) }), 85, kg(30)],
  ['not less what is to be reworked in packages', holds({ packed: kg(20) }, { toRework: kg(5), pending: kg(5) }), 85, kg(30)],
  ['nor what was reworked out of them', holds({ packed: kg(20), reworked: kg(5) }, { opened: kg(5) }), 85, kg(30)],
  ['below zero when more is packed than there was', holds({ packed: kg(51) }), 85, kg(-1)],
])('room to pack is %s', (_case, held, expectedYield, room) => {
  expect(roomToPack(held, percent(expectedYield))).toBe(room);
});
