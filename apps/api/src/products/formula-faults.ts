import type { formulaLine } from '@larderbook/contracts';
import { decimalText, faultsOf, percentParts } from '@larderbook/haccp';
import type { z } from 'zod';
import type { ItemNow } from './items-now';

type Line = z.output<typeof formulaLine>;
type Fault = { pointer: string; detail: string };

const whole = 1_000_000n; // 100 % in ten-thousandths of a percent

/** What keeps lines from being a formula, in sentences; empty when nothing does. Unknown items are the caller's to refuse. */
export function formulaFaults(lines: readonly Line[], items: ReadonlyMap<string, ItemNow>): Fault[] {
  const named = lines.map((line) => ({ ...line, item: items.get(line.itemId) }));
  const called = named.map(({ item, percent }) => ({ name: item?.name ?? '', percent }));
  return [
    ...meatFault(lines).map((detail) => ({ pointer: '#/lines', detail })),
    ...named.flatMap(({ part, item }, index) => misplaced(part, item).map((detail) => ({ pointer: `#/lines/${index}`, detail }))),
    ...faultsOf(called).map(({ line, because }) => ({ pointer: `#/lines/${line}`, detail: because })),
  ];
}

function meatFault(lines: readonly Line[]): string[] {
  const meats = lines.filter(({ part }) => part === 'meat');
  if (meats.length === 0) return ['A formula needs at least one meat: the meat block is what everything is a percentage of.'];
  const sum = meats.reduce((parts, { percent }) => parts + (percentParts(percent) ?? 0n), 0n);
  return sum === whole ? [] : [`The meats add up to ${decimalText(sum, 4)} %; together they make 100 %.`];
}

const sayKind = { meat: 'meat', ingredient: 'an ingredient', packaging: 'packaging' };
const sayPart = { meat: 'meats', ingredient: 'ingredients' };

const misplaced = (part: Line['part'], item: ItemNow | undefined): string[] =>
  !item || item.kind === part ? [] : [`${item.name} is ${sayKind[item.kind]}; it cannot stand among the ${sayPart[part]}.`];
