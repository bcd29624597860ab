import type { DeviationData, ReadingData } from '../entry-data';
import type { Sheet } from '../page/sheet';
import { Table, type Column, type Entry } from '../page/table';
import { words, type Paragraph } from '../page/words';
import { Footnotes } from './footnotes';
import { answeredBy, missInWords, whyMissed } from './missed';
import { figureOf, remarksOn } from './remarks';
import { verdictInShort } from './verdict-words';

type Field = Column & { of: (reading: ReadingData) => Paragraph | undefined };

/** Readings in the order they were taken. A column that nothing would stand in is left out. */
export function readingTable(sheet: Sheet, readings: ReadingData[], deviations: DeviationData[]): void {
  const isAnswer = readings.every(({ unit }) => !unit);
  const fields = fieldsFor(isAnswer).filter(({ of }) => readings.some((reading) => of(reading)));
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

function fieldsFor(isAnswer: boolean): Field[] {
  const body = (text: string | undefined) => (text ? words('body', text) : undefined);
  return [
    { head: 'Of what', share: 1.2, of: ({ what }) => body(what) },
    { head: isAnswer ? 'Answer' : 'As entered', width: isAnswer ? 40 : 56, align: isAnswer ? 'left' : 'right', of: figureOf },
    { head: 'Verdict', share: isAnswer ? 0.5 : 1, of: ({ verdict }) => verdict && verdictInShort(verdict) },
    { head: 'What was seen', share: 1.3, of: ({ note }) => (isAnswer ? body(note && `“${note}”`) : undefined) },
    { head: 'Probe, instrument', share: 0.9, of: ({ probe, instrument }) => body([probe, instrument].filter(Boolean).join(', ')) },
    { head: 'Taken by', width: 82, of: ({ by }) => body(by) },
  ];
}

function entryOf(reading: ReadingData, footnotes: Footnotes, deviations: DeviationData[], { clock }: Sheet): Omit<Entry, 'cells'> {
  const { at, verdict, deviation, flags } = reading;
  return {
    at,
    flags: footnotes.lettersOf(flags),
    under: remarksOn(reading, clock),
    ...(verdict?.kind === 'missed'
      ? {
          missed: [words('strong', missInWords(verdict)), ...whyMissed(verdict), ...answeredBy(deviation, deviations, clock)],
        }
      : {}),
  };
}
