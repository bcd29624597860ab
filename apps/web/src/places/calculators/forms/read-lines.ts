/** Lines of a formula as typed: rows, or what is wrong with the first line that cannot be read. */
export type FormulaLines = { rows: { name: string; percent: number }[]; error?: string };

/** On each line a name and then its percentage, with or without the sign: "Black pepper 0.25 %". */
export function readLines(text: string): FormulaLines {
  const rows: FormulaLines['rows'] = [];
  for (const [index, line] of text
    .split('\n')
    .map((each) => each.trim())
    .entries()) {
    if (line === '') continue;
    const [, name, percent] = /^(.*[^\s;])[\s;]+(\d+(?:\.\d+)?)\s*%?$/.exec(line) ?? [];
    if (name === undefined) return { rows: [], error: `Line ${index + 1}, “${line.slice(0, 40)}”, is not a name and a percentage.` };
    rows.push({ name, percent: Number(percent) });
  }
  return { rows };
}
