import type { LotRecordData } from '../lot-record-data';
import { bodyColumn } from '../page/area';
import { heading } from '../page/heading';
import { row } from '../page/row';
import type { Sheet } from '../page/sheet';
import { Table, type Entry } from '../page/table';
import { words } from '../page/words';
import { legendOfMarks, verdictInShort } from '../parts/verdict-words';
import type { SayOnPaper } from '../page/telling';

/** The first page shows an inspector where to look. */
export function atAGlance(sheet: Sheet, data: LotRecordData): void {
  const { pen, area, say } = sheet;
  const entries = data.controlPoints.flatMap((point) => limitsOf(point, say));
  if (!entries.length) return;
  sheet.space(6);
  sheet.hold(heading(pen, area, say('verdicts')));
  const table = new Table(sheet, [
    { head: say('control-point'), share: 1.15 },
    { head: say('limit'), share: 1.15 },
    { head: say('measured'), share: 1 },
    { head: say('verdict'), share: 1.25 },
  ]);
  for (const entry of entries) table.add(entry);
  table.end();
  sheet.put(row(pen, [{ ...bodyColumn(area), paragraphs: [legendOfMarks(say)] }], { above: 5, below: 4 }));
}

/** A longer statement stands in full at its control point. */
const most = 120;
export const inShort = (text: string) =>
  text.length <= most ? text : `${text.slice(0, text.lastIndexOf(' ', most)).replace(/[,;:]$/, '')} …`;

function limitsOf({ number, name, limits }: LotRecordData['controlPoints'][number], say: SayOnPaper): Entry[] {
  return limits.map(({ what, printed, verdict }) => ({
    label: number ?? say('control'),
    cells: [
      [words('body', name, what && { text: `, ${what}` })],
      [words('body', inShort(printed))],
      [verdict ? words('body', inShort(verdict.measured)) : words('slanted', say('nothing-yet'))],
      [verdict ? verdictInShort(verdict, say) : words('body', { mark: 'undetermined' }, say('not-judged-yet'))],
    ],
  }));
}
