import type { Signed } from '../sheet-data';
import type { Block } from '../page/block';
import { remark } from '../page/facts';
import type { Sheet } from '../page/sheet';
import { given, words } from '../page/words';

export function signature({ pen, area, clock, say }: Sheet, { by, at }: Signed, { note = '', strike = false } = {}): Block[] {
  const rule = (y: number) => pen.tags.artifact(() => pen.rule(area.body, y, area.body + 260, y, 'firm'));
  const line = { height: 5, draw: (top: number) => rule(top + 1) };
  return [
    remark(pen, area, say('signed'), words('product', { text: by, strike })),
    line,
    remark(pen, area, '', ...given(words('smallInk', clock.dayAndTimeWithZone(at)), note && words('smallStrong', note))),
  ];
}
