import type { formulaLine } from '@larderbook/contracts';
import { decimalText, faultsOf, percentParts } from '@larderbook/haccp';
import type { z } from 'zod';
import type { Located } from '../platform/problem';
import { told, type Told } from '../platform/told';
import type { ItemNow } from './items-now';

type Line = z.output<typeof formulaLine>;

const whole = 1_000_000n; // 100 % in ten-thousandths of a percent

/** The caller refuses unknown items. */
export function formulaFaults(lines: readonly Line[], items: ReadonlyMap<string, ItemNow>): Located[] {
  const named = lines.map((line) => ({ ...line, item: items.get(line.itemId) }));
  const called = named.map(({ item, percent }) => ({ name: item?.name ?? '', percent }));
  return [
    ...meatFault(lines).map((fault) => ({ pointer: '#/lines', ...fault })),
    ...named.flatMap(({ part, item }, index) => misplaced(part, item).map((fault) => ({ pointer: `#/lines/${index}`, ...fault }))),
    ...faultsOf(called).map(({ line, because }) => ({ pointer: `#/lines/${line}`, ...because })),
  ];
}

function meatFault(lines: readonly Line[]): Told[] {
  const meats = lines.filter(({ part }) => part === 'meat');
  if (meats.length === 0) return [told('needs-meat')];
  const sum = meats.reduce((parts, { percent }) => parts + (percentParts(percent) ?? 0n), 0n);
  return sum === whole ? [] : [told('meats-add-up', { sum: { value: decimalText(sum, 4), unit: '%' } })];
}

const misplaced = (part: Line['part'], item: ItemNow | undefined): Told[] =>
  !item || item.kind === part
    ? []
    : [told(part === 'meat' ? 'not-among-meats' : 'not-among-ingredients', { name: item.name, kind: item.kind })];
