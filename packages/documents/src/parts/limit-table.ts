import type { DeviationData, JudgedLimitData } from '../entry-data';
import type { Sheet } from '../page/sheet';
import { Table } from '../page/table';
import { given, words } from '../page/words';
import { answeredBy, whyMissed } from './missed';
import { sourceInWords, verdictInFull, verdictInShort } from './verdict-words';

/** A longer statement gets a wider column than a figure. */
const long = 70;

export function limitTable(sheet: Sheet, limits: JudgedLimitData[], deviations: DeviationData[], critical: boolean): void {
  const { say } = sheet;
  const table = new Table(sheet, [
    { head: say(critical ? 'critical-limit' : 'limit'), share: limits.some(({ printed }) => printed.length > long) ? 2.2 : 1.15 },
    { head: say('measured'), share: 1 },
    { head: say('verdict'), share: 1.1 },
  ]);
  for (const { what, printed, source, verdict, deviation } of limits) {
    table.add({
      label: inTheMargin(what ?? say('limit')),
      cells: [
        [words('strong', printed)],
        [verdict ? words('body', verdict.measured) : words('slanted', say('nothing-judged-yet'))],
        verdict ? [verdictInShort(verdict, say)] : [],
      ],
      under: verdict ? given(...verdictInFull(verdict, say)) : [words('small', sourceInWords(source, say))],
      ...(verdict?.kind === 'missed'
        ? {
            under: [],
            missed: [...whyMissed(verdict, say), ...answeredBy(deviation, deviations, sheet), words('small', sourceInWords(source, say))],
          }
        : {}),
    });
  }
  table.end();
}

const inTheMargin = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
