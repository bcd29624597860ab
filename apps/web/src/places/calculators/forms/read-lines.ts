import { faultOf, type LineFault } from './line-fault';

export type FormulaLines = { rows: { name: string; percent: number }[]; fault?: LineFault };

/** Each line is a name and its percentage, with or without the sign: "Black pepper 0.25 %". */
export function readLines(text: string): FormulaLines {
  const rows: FormulaLines['rows'] = [];
  for (const [index, line] of text
    .split('\n')
    .map((each) => each.trim())
    .entries()) {
    if (line === '') continue;
    const [, name, percent] = /^(.*[^\s;])[\s;]+(\d+(?:\.\d+)?)\s*%?$/.exec(line) ?? [];
    if (name === undefined) return { rows: [], fault: faultOf('line-not-name-and-percent', index, line) };
    rows.push({ name, percent: Number(percent) });
  }
  return { rows };
}
