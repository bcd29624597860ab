import type { CheckNotDoneData, MonitoredReadingData, MonitoringRowData } from '../monitoring-log-data';
import type { Column, Entry } from '../page/table';
import type { WallClock } from '../page/wall-clock';
import { given, words } from '../page/words';
import { answeredBy, missInWords, whyMissed } from '../parts/missed';
import { remarksOn } from '../parts/remarks';
import { verdictInShort } from '../parts/verdict-words';

export const logColumns: Column[] = [
  { head: 'Lot', width: 72 },
  { head: 'Product', share: 1.5 },
  { head: 'Reading', width: 52, align: 'right' },
  { head: 'Limit', share: 0.8 },
  { head: 'Verdict', share: 0.95 },
  { head: 'Observation', share: 0.9 },
  { head: 'Initials', width: 32 },
];

export function rowEntry(row: MonitoringRowData, clock: WallClock): Entry {
  return row.kind === 'reading' ? readingEntry(row, clock) : notDoneEntry(row);
}

function readingEntry(reading: MonitoredReadingData, clock: WallClock): Entry {
  const { at, lot, product, value, unit, limit, verdict, initials, deviation, note, ...rest } = reading;
  const { what, probe, instrument } = rest;
  const seen = [what, probe, instrument].filter(Boolean).join(', ');
  return {
    at,
    cells: [
      [words('body', lot ?? '–')],
      [words('body', product ?? '–')],
      [words('strong', unit ? `${value} ${unit}` : value)],
      [words('body', limit)],
      [verdict ? verdictInShort(verdict) : words('slanted', 'judged with its curve')],
      given(seen && words('smallInk', seen), note && words('smallInk', `“${note}”`)),
      [words('body', initials)],
    ],
    under: remarksOn(rest, clock),
    ...(verdict?.kind === 'missed' ? {
      missed: [words('strong', missInWords(verdict)), ...whyMissed(verdict), ...answeredBy(deviation, [], clock)],
    } : {}),
  };
}

/** A check that was due and not made is shown, never left out, and it is not a pass. */
function notDoneEntry({ dueAt, lot, product, what }: CheckNotDoneData): Entry {
  return {
    at: dueAt,
    cells: [
      [words('body', lot ?? '–')],
      [words('body', product ?? '–')],
      [words('strong', 'none')],
      [],
      [words('strong', { mark: 'undetermined' }, 'check not made')],
      [words('smallInk', what)],
      [],
    ],
  };
}
