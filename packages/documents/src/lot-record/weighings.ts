import type { JudgedData } from '../entry-data';
import type { LotRecordData, WeighingData } from '../lot-record-data';
import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Entry } from '../page/table';
import { given, words, type Paragraph, type Span } from '../page/words';
import { Footnotes } from '../parts/footnotes';
import { answeredBy, whyMissed } from '../parts/missed';
import { entered } from '../parts/entered';
import { remarksOn } from '../parts/remarks';
import { sourceInWords, verdictInShort } from '../parts/verdict-words';
import type { SayOnPaper } from '../page/telling';

export function weighings(sheet: Sheet, data: LotRecordData): void {
  const { pen, area, say } = sheet;
  if (!data.meatBlock && !data.weighings.length) return;
  sheet.space(10);
  sheet.hold(heading(pen, area, say('formula-and-cure')));
  if (data.meatBlock) meatBlock(sheet, data.meatBlock);
  if (!data.weighings.length) return sheet.put();
  const table = new Table(sheet, [
    { head: say('ingredient'), share: 1.3 },
    { head: say('target'), width: 52, align: 'right' },
    { head: say('weighed'), width: 52, align: 'right' },
    { head: say('judged'), share: 1.45 },
    { head: say('weighed-by'), width: 70 },
  ]);
  const footnotes = new Footnotes();
  for (const weighing of data.weighings) table.add(entryOf(weighing, footnotes, data, sheet));
  table.end();
  sheet.put(...footnotes.legend(sheet));
}

function meatBlock(sheet: Sheet, { weight, made }: NonNullable<LotRecordData['meatBlock']>): void {
  const { pen, area } = sheet;
  const said = words('strong', weight, made && { text: `  ${made}`, style: 'smallInk' });
  sheet.hold(remark(pen, area, sheet.say('meat-block'), said));
}

function entryOf(weighing: WeighingData, footnotes: Footnotes, { deviations }: LotRecordData, sheet: Sheet): Entry {
  const { say } = sheet;
  const { target, weighed, difference, instrument, controlPoint, judged, by, at } = weighing;
  const missed = judged.filter(({ verdict }) => verdict.kind === 'missed');
  return {
    at,
    flags: footnotes.lettersOf(weighing.flags),
    cells: [
      named(weighing),
      [words('body', target)],
      given(words('strong', weighed), difference && words('small', difference)),
      judged.flatMap((each) => judgement(each, controlPoint, say)),
      given(words('body', by), instrument && words('small', instrument)),
    ],
    under: [...entered(weighing, sheet), ...remarksOn({ amendments: weighing.amendments }, sheet)],
    ...(missed.length
      ? {
          missed: missed.flatMap((each) => [
            ...whyMissed(each.verdict, say),
            ...answeredBy(each.deviation, deviations, sheet),
            words('small', sourceInWords(each.verdict.source, say)),
          ]),
        }
      : {}),
  };
}

/** What a corrected delivery was taken for stands struck through. */
const named = ({ ingredient, detail, before = {} }: WeighingData): Paragraph[] =>
  given(
    words('body', ...struck(before.ingredient), ingredient),
    (detail || before.content) && words('small', ...struck(before.content), detail),
  );

const struck = (was: string | undefined): Span[] => (was ? [{ text: was, strike: true }, { text: '  ' }] : []);

function judgement({ what, verdict }: JudgedData, controlPoint: string | undefined, say: SayOnPaper): Paragraph[] {
  return [
    words('body', `${what} ${verdict.measured}`),
    verdictInShort(verdict, say),
    ...given(controlPoint && words('small', say('at-point', { point: controlPoint }))),
  ];
}
