import type { Column } from './form';
import { faultOf, type LineFault } from './line-fault';

export type Series = { rows: Record<string, number>[]; fault?: LineFault };

/**
 * Numbers stand apart by spaces, tabs, semicolons or commas; the first may be h:mm. Of what lasts for days it must be:
 * somebody who writes 12 means hours, and as minutes hardly any heat would be counted.
 */
export function readSeries(text: string, columns: readonly Pick<Column, 'key' | 'asClock'>[]): Series {
  const lines = text.split('\n').map((line) => line.trim());
  const rows: Record<string, number>[] = [];
  for (const [index, line] of lines.entries()) {
    if (line === '') continue;
    const row = readLine(line, columns);
    if (!row) return { rows: [], fault: faultOf('line-not-numbers', index, line, columns.length) };
    if (columns[0]?.asClock && !/^(0|\d+:[0-5]\d)[\s;,]/.test(line)) return { rows: [], fault: faultOf('line-needs-clock', index, line) };
    rows.push(row);
  }
  return { rows };
}

function readLine(line: string, columns: readonly Pick<Column, 'key'>[]): Record<string, number> | undefined {
  const cells = line.split(/[\s;,]+/).filter(Boolean);
  if (cells.length !== columns.length) return undefined;
  const numbers = cells.map((cell, index) => (index === 0 ? minutesOf(cell) : plain(cell)));
  if (numbers.some((number) => Number.isNaN(number))) return undefined;
  return Object.fromEntries(columns.map(({ key }, index) => [key, numbers[index] ?? NaN]));
}

function minutesOf(cell: string): number {
  const clock = /^(\d+):([0-5]\d)$/.exec(cell);
  return clock ? Number(clock[1]) * 60 + Number(clock[2]) : plain(cell);
}

const plain = (cell: string): number => (/^[-−]?\d+(\.\d+)?$/.test(cell) ? Number(cell.replace('−', '-')) : NaN);
