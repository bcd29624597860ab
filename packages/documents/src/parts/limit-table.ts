import type { DeviationData, JudgedLimitData } from '../entry-data';
import type { Sheet } from '../page/sheet';
import { Table } from '../page/table';
import { given, words } from '../page/words';
import { answeredBy, whyMissed } from './missed';
import { sourceInWords, verdictInFull, verdictInShort } from './verdict-words';

/** A statement of many words gets a wider column than a figure. */
const long = 70;

/** Each limit in force, a critical one or not, with what was measured against it, the verdict, and why. */
export function limitTable(sheet: Sheet, limits: JudgedLimitData[], deviations: DeviationData[], critical: boolean): void {
  const table = new Table(sheet, [
    { head: critical ? 'Critical limit' : 'Limit', share: limits.some(({ printed }) => printed.length > long) ? 2.2 : 1.15 },
    { head: 'Measured', share: 1 },
    { head: 'Verdict', share: 1.1 },
  ]);
  for (const { what, printed, source, verdict, deviation } of limits) {
    table.add({
      label: inTheMargin(what ?? 'limit'),
      cells: [
        [words('strong', printed)],
        [verdict ? words('body', verdict.measured) : words('slanted', 'nothing judged yet')],
        verdict ? [verdictInShort(verdict)] : [],
      ],
      under: verdict ? given(...verdictInFull(verdict)) : [words('small', sourceInWords(source))],
      ...(verdict?.kind === 'missed'
        ? {
            under: [],
            missed: [...whyMissed(verdict), ...answeredBy(deviation, deviations, sheet.clock), words('small', sourceInWords(source))],
          }
        : {}),
    });
  }
  table.end();
}

const inTheMargin = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
