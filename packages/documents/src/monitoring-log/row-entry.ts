import type { Verdict } from '@larderbook/haccp';
import type { CheckNotDoneData, JudgedCurveData, MonitoredReadingData, MonitoringRowData } from '../monitoring-log-data';
import type { Column, Entry } from '../page/table';
import type { WallClock } from '../page/wall-clock';
import { given, words, type Paragraph } from '../page/words';
import type { Footnotes } from '../parts/footnotes';
import { answeredBy, missInWords, whyMissed } from '../parts/missed';
import { figureOf, remarksOn } from '../parts/remarks';
import { verdictInShort } from '../parts/verdict-words';

export const logColumns: Column[] = [
  { head: 'Lot', width: 72 },
  { head: 'Product', share: 1.05 },
  { head: 'Reading', width: 54, align: 'right' },
  { head: 'Verdict', share: 0.95 },
  { head: 'Observation', share: 1.45 },
  { head: 'Initials', width: 34 },
];

/** What every row is read against: the limit that stands at the head of the log, the clock, the letters of flags. */
export type LogReader = { limit: string; clock: WallClock; footnotes: Footnotes };

export function rowEntry(row: MonitoringRowData, reader: LogReader): Entry {
  if (row.kind === 'reading') return readingEntry(row, reader);
  return row.kind === 'curve' ? curveEntry(row, reader) : notDoneEntry(row);
}

function readingEntry(reading: MonitoredReadingData, reader: LogReader): Entry {
  const { at, lot, product, limit, verdict, initials, deviation, note, beside = [], ...rest } = reading;
  const { what, probe, instrument, flags } = rest;
  const seen = [what, probe, instrument].filter(Boolean).join(', ');
  return {
    at,
    flags: reader.footnotes.lettersOf(flags),
    cells: [
      [words('body', lot ?? '–')],
      [words('smallInk', product ?? '–')],
      [figureOf(reading)],
      [verdict ? verdictInShort(verdict) : notJudgedAlone(rest)],
      given(...[[...beside, seen].filter(Boolean).join('; '), note && `“${note}”`].map((said) => said && words('smallInk', said))),
      [words('body', initials)],
    ],
    under: [...otherLimit(limit, reader), ...remarksOn(rest, reader.clock)],
    ...missedOf(verdict, deviation, reader),
  };
}

/** Why a row carries no verdict. */
const notJudgedAlone = ({ struck, isOfCurve, isLeftOut }: Partial<MonitoredReadingData>): Paragraph =>
  struck ? words('smallStrong', struck) : words('small', isOfCurve && !isLeftOut ? 'part of a curve' : 'not judged');

function curveEntry({ at, lot, product, limit, verdict, deviation }: JudgedCurveData, reader: LogReader): Entry {
  return {
    at,
    cells: [
      [words('strong', lot ?? '–')],
      [words('smallInk', product ?? '–')],
      [words('strong', 'curve')],
      [verdictInShort(verdict)],
      [words('smallInk', verdict.measured)],
      [],
    ],
    under: otherLimit(limit, reader),
    ...missedOf(verdict, deviation, reader),
  };
}

/** The limit stands once at the head; where another was in force, the row says which. */
function otherLimit(limit: string, reader: LogReader): Paragraph[] {
  return limit === reader.limit ? [] : [words('smallInk', { text: 'Limit in force: ', style: 'smallStrong' }, limit)];
}

function missedOf(verdict: Verdict | undefined, deviation: string | undefined, { clock }: LogReader) {
  if (verdict?.kind !== 'missed') return {};
  const said = [words('strong', missInWords(verdict)), ...whyMissed(verdict), ...answeredBy(deviation, [], clock)];
  return { missed: said };
}

/** A check that was due and not made is shown, never left out, and it is not a pass. */
function notDoneEntry({ dueAt, lot, product, what }: CheckNotDoneData): Entry {
  return {
    at: dueAt,
    cells: [
      [words('body', lot ?? '–')],
      [words('smallInk', product ?? '–')],
      [words('strong', 'none')],
      [words('strong', { mark: 'undetermined' }, 'check not made')],
      [words('smallInk', what)],
      [],
    ],
  };
}
