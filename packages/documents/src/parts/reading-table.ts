import type { DeviationData, ReadingData } from '../entry-data';
import type { Sheet } from '../page/sheet';
import { Table, type Column, type Entry } from '../page/table';
import { words, type Paragraph } from '../page/words';
import { Footnotes } from './footnotes';
import { answeredBy, missInWords, whyMissed } from './missed';
import { figureOf, remarksOn } from './remarks';
import { verdictInShort } from './verdict-words';
import type { SayOnPaper } from '../page/telling';

type Field = Column & { of: (reading: ReadingData) => Paragraph | undefined };

/** Empty columns are left out. */
export function readingTable(sheet: Sheet, readings: ReadingData[], deviations: DeviationData[]): void {
  const isAnswer = readings.every(({ unit }) => !unit);
  const fields = fieldsFor(isAnswer, sheet.say).filter(({ of }) => readings.some((reading) => of(reading)));
  const table = new Table(sheet, fields);
  const footnotes = new Footnotes();
  for (const reading of readings) {
    const cells = fields.map(({ of }) => [of(reading)].filter((said) => said !== undefined));
    const shown = isAnswer ? { ...reading, note: undefined } : reading;
    table.add({ ...entryOf(shown, footnotes, deviations, sheet), cells });
  }
  table.end();
  sheet.put(...footnotes.legend(sheet));
}

function fieldsFor(isAnswer: boolean, say: SayOnPaper): Field[] {
  const body = (text: string | undefined) => (text ? words('body', text) : undefined);
  return [
    { head: say('of-what'), share: 1.2, of: ({ what }) => body(what) },
    { head: say(isAnswer ? 'answer' : 'as-entered'), width: isAnswer ? 40 : 56, align: isAnswer ? 'left' : 'right', of: figureOf },
    { head: say('verdict'), share: isAnswer ? 0.5 : 1, of: ({ verdict }) => verdict && verdictInShort(verdict, say) },
    { head: say('what-was-seen'), share: 1.3, of: ({ note }) => (isAnswer ? body(note && say('quoted', { words: note })) : undefined) },
    { head: say('probe-instrument'), share: 0.9, of: ({ probe, instrument }) => body([probe, instrument].filter(Boolean).join(', ')) },
    { head: say('taken-by'), width: 82, of: ({ by }) => body(by) },
  ];
}

function entryOf(reading: ReadingData, footnotes: Footnotes, deviations: DeviationData[], sheet: Sheet): Omit<Entry, 'cells'> {
  const { at, verdict, deviation, flags } = reading;
  return {
    at,
    flags: footnotes.lettersOf(flags),
    under: remarksOn(reading, sheet),
    ...(verdict?.kind === 'missed'
      ? {
          missed: [
            words('strong', missInWords(verdict, sheet.say)),
            ...whyMissed(verdict, sheet.say),
            ...answeredBy(deviation, deviations, sheet),
          ],
        }
      : {}),
  };
}
