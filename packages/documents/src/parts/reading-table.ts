import type { DeviationData, ReadingData } from '../entry-data';
import { subheading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Column, type Entry } from '../page/table';
import { words } from '../page/words';
import { answeredBy, missInWords, whyMissed } from './missed';
import { remarksOn } from './remarks';
import { verdictInShort } from './verdict-words';

/** Readings in the order they were taken. A column that nothing would stand in is left out. */
export function readingTable(sheet: Sheet, readings: ReadingData[], deviations: DeviationData[]): void {
  const isJudged = readings.some(({ verdict }) => verdict);
  const columns: Column[] = [
    { head: 'Of what', share: 1.3 },
    { head: 'Probe, instrument', share: 0.85 },
    { head: 'As entered', width: 54, align: 'right' },
    ...(isJudged ? [{ head: 'Verdict', share: 1.2 }] : []),
    { head: 'Taken by', width: 78 },
  ];
  sheet.hold(subheading(sheet.pen, sheet.area, 'Readings'));
  const table = new Table(sheet, columns);
  for (const reading of readings) table.add(entryOf(reading, isJudged, deviations, sheet));
  table.end();
}

function entryOf(reading: ReadingData, isJudged: boolean, deviations: DeviationData[], { clock }: Sheet): Entry {
  const { what, value, unit, probe, instrument, by, at, verdict, deviation } = reading;
  return {
    at,
    cells: [
      [words('body', what ?? 'reading')],
      [words('body', [probe, instrument].filter(Boolean).join(', '))],
      [words('strong', unit ? `${value} ${unit}` : value)],
      ...(isJudged ? [verdict ? [verdictInShort(verdict)] : []] : []),
      [words('body', by)],
    ],
    under: remarksOn(reading, clock),
    ...(verdict?.kind === 'missed' ? {
      missed: [
        words('strong', missInWords(verdict)), ...whyMissed(verdict), ...answeredBy(deviation, deviations, clock),
      ],
    } : {}),
  };
}
