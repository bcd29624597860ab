import type { Told } from '@larderbook/haccp';
import type { CheckNotDoneData, JudgedCurveData, MonitoredReadingData, MonitoringRowData } from '../monitoring-log-data';
import type { Column, Entry } from '../page/table';
import type { SayOnPaper, Telling } from '../page/telling';
import { given, words, type Paragraph } from '../page/words';
import type { Footnotes } from '../parts/footnotes';
import { answeredBy, missInWords, whyMissed } from '../parts/missed';
import { figureOf, remarksOn } from '../parts/remarks';
import { verdictInShort } from '../parts/verdict-words';

export const logColumns = (say: SayOnPaper): Column[] => [
  { head: say('lot'), width: 72 },
  { head: say('product'), share: 1.05 },
  { head: say('reading'), width: 54, align: 'right' },
  { head: say('verdict'), share: 0.95 },
  { head: say('observation'), share: 1.45 },
  { head: say('initials'), width: 34 },
];

/** `limit` is the one at the head of the log. */
export type LogReader = { limit: string; telling: Telling; footnotes: Footnotes };

export function rowEntry(row: MonitoringRowData, reader: LogReader): Entry {
  if (row.kind === 'reading') return readingEntry(row, reader);
  return row.kind === 'curve' ? curveEntry(row, reader) : notDoneEntry(row, reader.telling);
}

function readingEntry(reading: MonitoredReadingData, reader: LogReader): Entry {
  const { at, lot, product, limit, verdict, initials, deviation, note, beside = [], ...rest } = reading;
  const { what, probe, instrument, flags } = rest;
  const { say } = reader.telling;
  const seen = [what, probe, instrument].filter(Boolean).join(', ');
  return {
    at,
    flags: reader.footnotes.lettersOf(flags),
    cells: [
      [words('body', lot ?? '–')],
      [words('smallInk', product ?? '–')],
      [figureOf(reading)],
      [verdict ? verdictInShort(verdict, say) : notJudgedAlone(rest, say)],
      given(
        ...[[...beside, seen].filter(Boolean).join('; '), note && say('quoted', { words: note })].map(
          (said) => said && words('smallInk', said),
        ),
      ),
      [words('body', initials)],
    ],
    under: [...otherLimit(limit, reader), ...remarksOn(rest, reader.telling)],
    ...missedOf(verdict, deviation, reader),
  };
}

const notJudgedAlone = ({ struck, isOfCurve, isLeftOut }: Partial<MonitoredReadingData>, say: SayOnPaper): Paragraph =>
  struck ? words('smallStrong', say(`row-${struck}`)) : words('small', say(isOfCurve && !isLeftOut ? 'part-of-a-curve' : 'not-judged'));

function curveEntry({ at, lot, product, limit, verdict, deviation }: JudgedCurveData, reader: LogReader): Entry {
  return {
    at,
    cells: [
      [words('strong', lot ?? '–')],
      [words('smallInk', product ?? '–')],
      [words('strong', reader.telling.say('curve'))],
      [verdictInShort(verdict, reader.telling.say)],
      [words('smallInk', verdict.measured)],
      [],
    ],
    under: otherLimit(limit, reader),
    ...missedOf(verdict, deviation, reader),
  };
}

/** A row names its limit only where the head of the log has another. */
function otherLimit(limit: string, reader: LogReader): Paragraph[] {
  return limit === reader.limit
    ? []
    : [words('smallInk', { text: `${reader.telling.say('limit-in-force')} `, style: 'smallStrong' }, limit)];
}

function missedOf(verdict: Told | undefined, deviation: string | undefined, { telling }: LogReader) {
  if (verdict?.kind !== 'missed') return {};
  const said = [
    words('strong', missInWords(verdict, telling.say)),
    ...whyMissed(verdict, telling.say),
    ...answeredBy(deviation, [], telling),
  ];
  return { missed: said };
}

/** A check not made is always shown, and it is no pass. */
function notDoneEntry({ dueAt, lot, product, what }: CheckNotDoneData, { say }: Telling): Entry {
  return {
    at: dueAt,
    cells: [
      [words('body', lot ?? '–')],
      [words('smallInk', product ?? '–')],
      [words('strong', say('none'))],
      [words('strong', { mark: 'undetermined' }, say('check-not-made'))],
      [words('smallInk', what)],
      [],
    ],
  };
}
