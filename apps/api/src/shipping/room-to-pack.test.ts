import { massOf } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import type { LotWeights } from '../lots/lot-weights.queries';
import { roomToPack } from './room-to-pack';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const weights = (some: Partial<LotWeights> = {}, aside: Partial<LotWeights['aside']> = {}): LotWeights => ({
  wentIn: kg(50),
  removed: 0n,
  condemned: 0n,
  destroyed: 0n,
  reworked: 0n,
  packed: 0n,
  shipped: 0n,
  aside: { condemned: 0n, toRework: 0n, opened: 0n, pending: 0n, ...aside },
  ...some,
});
const percent = (yielded: number) => BigInt(yielded * 10_000);

test.each<[string, LotWeights, number, bigint]>([
  ['all that went in, whatever the formula is expected to lose', weights(), 85, kg(50)],
  ['at exactly 100 %', weights(), 100, kg(50)],
  ['more, when the formula takes up water', weights(), 120, kg(60)],
  ['less what was removed, condemned and reworked', weights({ removed: kg(4), condemned: kg(3), reworked: kg(2) }), 85, kg(41)],
  ['less what is packed', weights({ packed: kg(50) }), 85, 0n],
  ['less what is loose and to be reworked', weights({}, { pending: kg(10) }), 85, kg(40)],
  ['not less what was condemned in packages', weights({ packed: kg(20), condemned: kg(5) }, { condemned: kg(5) }), 85, kg(30)],
  ['not less what is to be reworked in packages', weights({ packed: kg(20) }, { toRework: kg(5), pending: kg(5) }), 85, kg(30)],
  ['nor what was reworked out of them', weights({ packed: kg(20), reworked: kg(5) }, { opened: kg(5) }), 85, kg(30)],
  ['below zero when more is packed than there was', weights({ packed: kg(51) }), 85, kg(-1)],
])('room to pack is %s', (_case, lot, expectedYield, room) => {
  expect(roomToPack(lot, percent(expectedYield))).toBe(room);
});
