import type { JudgedData } from '../entry-data';
import type { LotRecordData, WeighingData } from '../lot-record-data';
import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Entry } from '../page/table';
import { given, words, type Paragraph } from '../page/words';
import { answeredBy, whyMissed } from '../parts/missed';
import { remarksOn } from '../parts/remarks';
import { sourceInWords, verdictInFull, verdictInShort } from '../parts/verdict-words';

/** The meat block as trimmed, and every ingredient weighed against it. */
export function weighings(sheet: Sheet, data: LotRecordData): void {
  const { pen, area } = sheet;
  if (!data.meatBlock && !data.weighings.length) return;
  sheet.space(10);
  sheet.hold(heading(pen, area, 'Formula and cure'));
  if (data.meatBlock) meatBlock(sheet, data.meatBlock);
  if (!data.weighings.length) return;
  const table = new Table(sheet, [
    { head: 'Ingredient', share: 1.3 },
    { head: 'Target', width: 52, align: 'right' },
    { head: 'Weighed', width: 52, align: 'right' },
    { head: 'Judged', share: 1.45 },
    { head: 'Weighed by', width: 70 },
  ]);
  for (const weighing of data.weighings) table.add(entryOf(weighing, data, sheet));
  table.end();
}

function meatBlock(sheet: Sheet, { weight, made, concentrations }: NonNullable<LotRecordData['meatBlock']>): void {
  const { pen, area } = sheet;
  sheet.put(remark(pen, area, 'Meat block', words('strong', weight, made && { text: `  ${made}`, style: 'smallInk' })));
  for (const { what, verdict } of concentrations) {
    sheet.put(remark(pen, area, 'In the block',
      words('body', { mark: verdict.kind }, `${what} ${verdict.measured}, limit ${verdict.limit}: ${verdict.kind}`),
      ...verdictInFull(verdict)));
  }
}

function entryOf(weighing: WeighingData, { deviations }: LotRecordData, { clock }: Sheet): Entry {
  const { ingredient, detail, target, weighed, difference, instrument, judged, by, at } = weighing;
  const missed = judged.filter(({ verdict }) => verdict.kind === 'missed');
  return {
    at,
    cells: [
      given(words('body', ingredient), detail && words('small', detail)),
      [words('body', target)],
      given(words('strong', weighed), difference && words('small', difference)),
      judged.flatMap(judgement),
      given(words('body', by), instrument && words('small', instrument)),
    ],
    under: remarksOn({ flags: weighing.flags, amendments: weighing.amendments }, clock),
    ...(missed.length ? { missed: missed.flatMap((each) => [...whyMissed(each.verdict),
      ...answeredBy(each.deviation, deviations, clock), words('small', sourceInWords(each.verdict.source))]) } : {}),
  };
}

function judgement({ what, verdict }: JudgedData): Paragraph[] {
  return [words('body', `${what} ${verdict.measured}`), verdictInShort(verdict)];
}
