import type { formulaLine } from '@larderbook/contracts';
import { decimalText, faultsOf, percentParts } from '@larderbook/haccp';
import type { z } from 'zod';
import type { ItemNow } from './items-now';

type Line = z.output<typeof formulaLine>;
type Fault = { pointer: string; detail: string };

const whole = 1_000_000n; // 100 % in ten-thousandths of a percent

/** Everything that keeps lines from being a formula, in sentences; empty when nothing does. Items that are unknown are the caller's to refuse. */
export function formulaFaults(lines: readonly Line[], items: ReadonlyMap<string, ItemNow>): Fault[] {
  const named = lines.map((line) => ({ ...line, item: items.get(line.itemId), name: items.get(line.itemId)?.name ?? '' }));
  const faulty = faultsOf(named).map(({ line, because }) => ({ pointer: `#/lines/${line}`, detail: because }));
  const misplaced = named.flatMap(({ part, item, name }, index) =>
    item && item.kind !== part ? [{ pointer: `#/lines/${index}`, detail: `${name} is ${sayKind(item.kind)}; it cannot stand among the ${part === 'meat' ? 'meats' : 'ingredients'}.` }] : [],
  );
  return [...meatFaults(lines), ...misplaced, ...faulty];
}

function meatFaults(lines: readonly Line[]): Fault[] {
  const meats = lines.filter(({ part }) => part === 'meat');
  if (meats.length === 0) return [{ pointer: '#/lines', detail: 'A formula needs at least one meat: the meat block is what everything is a percentage of.' }];
  const sum = meats.reduce((parts, { percent }) => parts + (percentParts(percent) ?? 0n), 0n);
  return sum === whole ? [] : [{ pointer: '#/lines', detail: `The meats add up to ${decimalText(sum, 4)} %; together they make 100 %.` }];
}

const sayKind = (kind: ItemNow['kind']): string => ({ meat: 'meat', ingredient: 'an ingredient', packaging: 'packaging' })[kind];
