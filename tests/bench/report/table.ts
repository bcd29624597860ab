import type { Figure, Measured } from './figure';

/** What was measured, ours, the baseline, how the two compare, and what else is worth saying. */
type Row = [what: string, ours: string, beside: string, ratio: string, more: string];

/** The figures under their headings, in columns that line up over all of them. */
export function table(all: readonly Measured[]): string {
  const rows = all.map(({ title, figures }) => ({ title, rows: figures.map(rowOf) }));
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.flatMap((part) => part.rows.map((row) => row[column]?.length ?? 0))));
  return rows.map((part) => [part.title, ...part.rows.map((row) => lineOf(row, widths))].join('\n')).join('\n\n');
}

const rowOf = ({ what, value, unit, beside, latency, note }: Figure): Row => [
  what,
  say(value, unit),
  beside ? say(beside.value, unit) : '',
  beside ? `${(value / beside.value).toFixed(2)} ×` : '',
  [beside?.what, latency && sayLatency(latency), note].filter(Boolean).join(' · '),
];

const lineOf = ([what, ours, beside, ratio, more]: Row, [w0 = 0, w1 = 0, w2 = 0, w3 = 0]: number[]): string =>
  `  ${what.padEnd(w0)}  ${ours.padStart(w1)}  ${beside.padStart(w2)}  ${ratio.padStart(w3)}  ${more}`.trimEnd();

const say = (value: number, unit: string): string => `${figure(value)} ${unit}`;
const sayLatency = ({ p50, p99 }: { p50: number; p99: number }): string => `p50 ${figure(p50)} ms, p99 ${figure(p99)} ms`;

/** Three figures that mean something. */
const figure = (value: number): string => (value >= 100 ? Math.round(value).toLocaleString('en') : value.toPrecision(3));
