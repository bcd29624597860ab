import type { SheetLine } from './sheet-line';

export type Folded = { kind: 'line'; line: SheetLine } | { kind: 'folded'; id: string; lines: SheetLine[] };

/** A longer run of plain readings is folded to its first and last few. */
const longest = 12;
const keptAtEachEnd = 3;

/** Whatever a person must see is never folded away. */
export function foldReadings(lines: SheetLine[], unfolded: ReadonlySet<string>): Folded[] {
  return runsOf(lines).flatMap((run): Folded[] => {
    const middle = run.slice(keptAtEachEnd, -keptAtEachEnd);
    const id = `folded ${middle[0]?.id}`;
    if (run.length <= longest || unfolded.has(id)) return run.map(asLine);
    return [...run.slice(0, keptAtEachEnd).map(asLine), { kind: 'folded', id, lines: middle }, ...run.slice(-keptAtEachEnd).map(asLine)];
  });
}

function runsOf(lines: SheetLine[]): SheetLine[][] {
  const runs: SheetLine[][] = [];
  for (const line of lines) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    const continues = before && isPlain(before) && isPlain(line) && before.controlPointId === line.controlPointId;
    if (run && continues) run.push(line);
    else runs.push([line]);
  }
  return runs;
}

const isPlain = ({ kind, flags, corrects, deviation, judged }: SheetLine): boolean =>
  kind === 'reading' &&
  flags.length === 0 &&
  corrects.length === 0 &&
  !deviation &&
  judged.every(({ verdict }) => verdict.kind !== 'missed');

const asLine = (line: SheetLine): Folded => ({ kind: 'line', line });
