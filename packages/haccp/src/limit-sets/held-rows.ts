import type { DwellRow } from '../kinds/dwell/dwell-limit';
import { exactly, matched, readSeconds, readTemperature } from './read-cell';
import { cellOf, rowsOf, type Cells, type Table } from './set-file';

/** "70 °C for 2 min; 75 °C for 30 s", "table roast", "table chicken and turkey, 7 % fat": of two tables the longer. */
export function readHeld(cell: string, tables: Record<string, Table> = {}): DwellRow[] {
  const [, names, column = 'time'] = /^table (.+?)(?:, (.+))?$/.exec(cell) ?? [];
  if (names === undefined) return cell.split('; ').map(readHold);
  return heldRows(
    names.split(' and ').map((name) => tableCalled(name, tables)),
    [column],
  );
}

/** The longest time of the columns; all tables have the same temperatures. */
export function heldRows(tables: readonly Table[], columns: readonly string[]): DwellRow[] {
  const all = tables.map(rowsOf);
  return (all[0] as Cells[]).map((cells, index) => ({
    at: temperatureOf(cells),
    seconds: Math.max(...all.flatMap((rows) => columns.map((column) => readSeconds(cellOf(rows[index] as Cells, column))))),
  }));
}

function readHold(text: string): DwellRow {
  const [, at, time] = matched(/^(.+) for (.+)$/, text);
  return { at: readTemperature(at as string), seconds: readSeconds(time as string) };
}

const temperatureOf = (cells: Cells): DwellRow['at'] => ({
  ...('°F' in cells && { '°F': exactly(cellOf(cells, '°F'), 2) }),
  ...('°C' in cells && { '°C': exactly(cellOf(cells, '°C'), 2) }),
});

function tableCalled(name: string, tables: Record<string, Table>): Table {
  const table = tables[name];
  if (!table) throw new RangeError(`There is no table ${name}`);
  return table;
}
