import type { Clock } from '@larderbook/messages';
import type { ReadingData } from '../entry-data';
import { bodyColumn, marginColumn } from '../page/area';
import { stack, type Block } from '../page/block';
import { row, type Cell } from '../page/row';
import type { Sheet } from '../page/sheet';
import { toTheRight, words, type Paragraph, type Span } from '../page/words';
import { Footnotes, markOf } from './footnotes';
import { figureOf, remarksOn } from './remarks';
import type { Telling } from '../page/telling';

const across = 4;
/** A longer column would seldom fit the foot of a page. */
const down = 12;
const blank = 12;

/** Columns of time and figure, read downwards. */
export function readingGrid(sheet: Sheet, readings: ReadingData[]): void {
  const footnotes = new Footnotes();
  for (const run of alike(readings)) {
    const parts = byDay(run, sheet.clock).flatMap((day) => cut(day, across * down));
    for (const [index, part] of parts.entries()) {
      if (index === 0) sheet.hold(takenBy(sheet, run));
      sheet.put(columns(sheet, part, footnotes));
    }
  }
  sheet.put(...footnotes.legend(sheet));
}

function alike(readings: ReadingData[]): ReadingData[][] {
  return grouped(readings, ({ what, probe, instrument, by }) => [what, probe, instrument, by].join('\n'));
}

const byDay = (readings: ReadingData[], clock: Clock) => grouped(readings, ({ at }) => clock.day(at));

function grouped(readings: ReadingData[], keyOf: (reading: ReadingData) => string): ReadingData[][] {
  const groups = new Map<string, ReadingData[]>();
  for (const reading of readings) groups.set(keyOf(reading), [...(groups.get(keyOf(reading)) ?? []), reading]);
  return [...groups.values()];
}

function cut<Each>(all: Each[], most: number): Each[][] {
  return all.length <= most ? [all] : [all.slice(0, most), ...cut(all.slice(most), most)];
}

function takenBy({ pen, area, say }: Sheet, [first]: ReadingData[]): Block {
  const { what, probe, instrument, by } = first ?? { by: '' };
  const said = [what, probe, instrument, say('taken-by-whom', { who: by })].filter(Boolean).join(', ');
  return row(pen, [{ ...bodyColumn(area), paragraphs: [words('smallInk', said)] }], { above: 1, below: 3 });
}

function columns(sheet: Sheet, readings: ReadingData[], footnotes: Footnotes): Block {
  const { pen, area, clock } = sheet;
  const height = Math.ceil(readings.length / across);
  const day = { ...marginColumn(area), paragraphs: [toTheRight(words('day', clock.day(readings[0]?.at ?? 0)))] };
  const lines = Array.from({ length: height }, (_each, line) => {
    const cells = readings
      .filter((_reading, index) => index % height === line)
      .flatMap((reading, column) => figureIn(sheet, reading, column, footnotes));
    return row(pen, line === 0 ? [day, ...cells] : cells, {
      above: 1.5,
      below: 1.5,
      role: 'TD',
      under: { line: 'hair', from: area.left, to: area.right },
    });
  });
  const { height: tall, draw } = stack(lines);
  return { height: tall, draw: (top) => pen.tags.group('Table', () => draw(top)) };
}

function figureIn(sheet: Sheet, reading: ReadingData, column: number, footnotes: Footnotes): Cell[] {
  const { area, clock } = sheet;
  const width = (area.right - area.body - (across - 1) * blank) / across;
  const x = area.body + column * (width + blank);
  const forTime = width * 0.52;
  const time = words('time', ...marksOf(reading, footnotes, sheet), clock.time(reading.at));
  return [
    { x, width: forTime, paragraphs: [toTheRight(time)] },
    { x: x + forTime, width: width - forTime, paragraphs: [toTheRight(figureOf(reading))] },
  ];
}

const textOf = ({ spans }: Paragraph): string => spans.map((span) => ('text' in span ? span.text : '')).join('');

/** Remarks have no room here and become notes with a letter. */
function marksOf(reading: ReadingData, footnotes: Footnotes, telling: Telling): Span[] {
  const flags = (reading.flags ?? []).map((flag) => footnotes.letterOf(flag));
  const remarks = remarksOn(reading, telling).map((remark) => footnotes.letterFor(textOf(remark), remark));
  const letters = [...flags, ...remarks].join(' ');
  return letters ? [...markOf(letters), { text: ' ' }] : [];
}
