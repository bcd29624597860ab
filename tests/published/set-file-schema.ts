import {
  forces,
  placesIn,
  productClasses,
  publishedJurisdictions,
  purposes,
  waysKnown,
  type FigureUnit,
  type PublishedJurisdiction,
} from '@larderbook/haccp';
import { z } from 'zod';
import {
  cellOf,
  listOf,
  rowsOf,
  type Cells,
  type SetFile,
  type SheetFile,
  type Table,
  type TableAsIn,
} from '../../packages/haccp/src/limit-sets/set-file';

const UNITS = ['ppm', '%', 'ratio', 'aw', 'pH', 'h', 'min', 'days', '°C·h', '°F·h', 'log10', 'cfu/g', 'lb', 'mm'] satisfies FigureUnit[];
const NUMBER = String.raw`(?:0|[1-9]\d*)(?:\.\d*[1-9])?`;
const DEGREES = `-?${NUMBER}`;
const TEMPERATURE = String.raw`(?:${DEGREES} °F(?: \(${DEGREES} °C\))?|${DEGREES} °C)`;
const TIME = `${NUMBER} (?:h|min|s)`;
const STAGE = `(?:${TEMPERATURE}|end of cooking) to ${TEMPERATURE} in ${TIME}(?: from the start)?`;

const written = (pattern: string) => z.string().regex(new RegExp(`^(?:${pattern})$`));
/** A least, a most, or both. */
const bounds = (amount: string) => written(`[≥>] ${amount}(?: and [≤<] ${amount})?|[≤<] ${amount}`);
const several = (pattern: string) => written(`${pattern}(?:; ${pattern})*`);
const words = z.string().regex(/^\S.*\S$|^\S$/);
const yes = z.literal('yes').optional();
const date = written(String.raw`\d{4}(?:-\d{2}(?:-\d{2})?)?`);

const everyRow = {
  id: written('[a-z0-9.]+(?:-[a-z0-9.]+)*'),
  purpose: z.enum(purposes),
  work: words,
  where: words,
  cited: words.optional(),
  known: z.enum(waysKnown),
  default: yes,
  'partly read': yes,
  product: words.optional(),
  place: words.optional(),
  asks: words.optional(),
  force: z.enum(forces).optional(),
  from: date.optional(),
  until: date.optional(),
};
const table = String.raw`table [a-z0-9.-]+(?: and [a-z0-9.-]+)?(?:, .+)?`;
const limit = z.discriminatedUnion('kind', [
  z.strictObject({ ...everyRow, kind: z.literal('range'), figure: bounds(TEMPERATURE) }),
  z.strictObject({
    ...everyRow,
    kind: z.literal('figure'),
    of: words,
    printed: words.optional(),
    figure: bounds(`${NUMBER} (?:${UNITS.join('|')})`).or(written(`≥ ${NUMBER} ppm, advised`)),
  }),
  z.strictObject({
    ...everyRow,
    kind: z.literal('concentration'),
    printed: words,
    of: z.enum(['sodium nitrite', 'sodium nitrate', 'sodium erythorbate', 'phosphate']),
    figure: written(`≤ ${NUMBER} ppm(?: as NO[₂₃])?`),
  }),
  z.strictObject({
    ...everyRow,
    kind: z.literal('dwell'),
    odd: several(TEMPERATURE).optional(),
    figure: several(`${TEMPERATURE} for ${TIME}`).or(written(table)),
  }),
  z.strictObject({
    ...everyRow,
    kind: z.literal('cooling'),
    figure: several(STAGE),
    begun: written(TIME).optional(),
    gap: written(TIME).optional(),
  }),
  z.strictObject({ ...everyRow, kind: z.literal('bandTime'), figure: written(STAGE) }),
  z.strictObject({ ...everyRow, kind: z.literal('attestation'), figure: z.literal('as worded') }),
]);

const anyTable = z.strictObject({
  each: z.record(z.string(), z.string()).optional(),
  columns: z.array(words),
  rows: z.array(z.array(z.string())).min(1),
});
const asIn = z.strictObject({ 'as in': words, but: z.record(z.string(), z.string()).optional() });
const sheet = {
  id: words,
  remarks: z.array(words),
  works: z
    .record(words, z.strictObject({ citation: words, edition: words, url: z.url().optional(), validFrom: date, force: z.enum(forces) }))
    .optional(),
  groups: z.record(words, z.array(z.enum(productClasses)).min(2)).optional(),
  asks: z
    .record(
      words,
      z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.enum(['nitrite', 'accelerator']), per: z.enum(['meat block', 'batch']), least: written(`${NUMBER} ppm`) }),
        z.strictObject({
          kind: z.literal('salt in water phase'),
          formula: z.enum(['salt/(salt+water)', 'salt/water']),
          least: written(`${NUMBER} %`),
        }),
        z.strictObject({ kind: z.enum(['statement', 'support']) }),
      ]),
    )
    .optional(),
  holds: z.record(words, anyTable).optional(),
};
const setHead = z.strictObject({
  ...sheet,
  jurisdiction: z.enum(publishedJurisdictions),
  edition: words,
  validFrom: date,
  replaces: words.optional(),
  isPartial: z.literal(true).optional(),
});
const fileWith = (head: z.ZodType) =>
  z
    .object({
      set: head,
      words: z.strictObject({
        title: words,
        asks: z.record(words, words).optional(),
        rows: z.record(words, z.strictObject({ title: words, note: words.optional(), statement: words.optional() })).optional(),
      }),
    })
    .catchall(anyTable.or(asIn));

const [setFile, sheetFile] = [fileWith(setHead), fileWith(z.strictObject(sheet))];

/** Everything that is wrong with a data file as it is written; its figures themselves `faultsOfSets` checks. */
export function faultsOfFile(given: SheetFile): string[] {
  const parsed = ('jurisdiction' in given.set ? setFile : sheetFile).safeParse(given);
  if (!parsed.success) return parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
  const { set, words: said, ...tables } = given;
  const own = Object.entries(tables as Record<string, Table | TableAsIn>).flatMap(([name, one]) =>
    'as in' in one ? [] : [[name, one] as const],
  );
  const rows = own.flatMap(([, one]) => rowsOf(one));
  return [
    ...own.flatMap(([name, one]) => faultsOfShape(name, one)),
    ...Object.entries(set.holds ?? {}).flatMap(([name, one]) => [...faultsOfShape(name, one), ...faultsOfHolds(name, one)]),
    ...rows.flatMap((cells) => faultsOfRow(cells, given)),
    ...unlike(
      'row',
      rows.map((cells) => cellOf(cells, 'id')),
      Object.keys(said.rows ?? {}),
    ),
    ...unlike(
      'condition',
      Object.keys(set.asks ?? {}).filter((name) => set.asks?.[name]?.least === undefined),
      Object.keys(said.asks ?? {}),
    ),
    ...idleParts(given, rows),
  ];
}

function faultsOfShape(name: string, { each = {}, columns, rows }: Table): string[] {
  const twice = columns.filter((column, index) => columns.indexOf(column) < index || column in each);
  const short = rows.filter((row) => row.length !== columns.length);
  return [
    ...twice.map((column) => `${name}: the column ${column} is there twice`),
    ...short.map(([id]) => `${name}: ${id} has not a cell in each column`),
  ];
}

/** Hotter from row to row, and never longer. */
export function faultsOfHolds(name: string, holds: Table): string[] {
  const units = holds.columns.filter((column) => column.startsWith('°'));
  const times = holds.columns.filter((column) => !column.startsWith('°'));
  const rows = rowsOf(holds);
  return rows.flatMap((row, index) => {
    const before = rows[index - 1];
    const secondsIn = (cells: Cells, column: string) =>
      Number.parseFloat(cellOf(cells, column)) * (cellOf(cells, column).endsWith('min') ? 60 : 1);
    return [
      ...units
        .filter((unit) => !new RegExp(`^${DEGREES}$`).test(cellOf(row, unit)))
        .map((unit) => `${name}: “${cellOf(row, unit)}” is no temperature in ${unit}`),
      ...times
        .filter((column) => !new RegExp(`^${NUMBER} (?:min|s)$`).test(cellOf(row, column)))
        .map((column) => `${name}: “${cellOf(row, column)}” is no time`),
      ...units
        .filter((unit) => before && !(Number(cellOf(row, unit)) > Number(cellOf(before, unit))))
        .map((unit) => `${name}: ${cellOf(row, unit)} ${unit} is not hotter than the row before`),
      ...times
        .filter((column) => before && secondsIn(row, column) > secondsIn(before, column))
        .map((column) => `${name}: ${cellOf(row, column)} is longer than in the colder row before`),
    ];
  });
}

function faultsOfRow(cells: Cells, { set, words: said }: SheetFile): string[] {
  const id = cellOf(cells, 'id');
  const filled = Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== ''));
  const parsed = limit.safeParse(filled);
  const places = 'jurisdiction' in set ? placesIn[(set as SetFile['set']).jurisdiction as PublishedJurisdiction] : [];
  const unknown = [
    ...listOf(cells, 'product')
      .filter((name) => !set.groups?.[name] && !productClasses.some((one) => one === name))
      .map((name) => `product ${name}`),
    ...listOf(cells, 'place')
      .filter((name) => !places.includes(name))
      .map((name) => `place ${name}`),
    ...listOf(cells, 'asks')
      .filter((name) => !set.asks?.[name])
      .map((name) => `condition ${name}`),
    ...(set.works?.[cellOf(cells, 'work')] ? [] : [`work ${cellOf(cells, 'work')}`]),
  ];
  const isWorded = (cellOf(cells, 'kind') === 'attestation') === (said.rows?.[id]?.statement !== undefined);
  return [
    ...(parsed.success ? [] : parsed.error.issues.map((issue) => `${id}: ${issue.path.join('.')}: ${issue.message}`)),
    ...unknown.map((what) => `${id}: there is no ${what}`),
    ...(isWorded ? [] : [`${id}: a statement belongs to an attestation, and to nothing else`]),
  ];
}

/** Ids on one side alone, and ids used twice. */
const unlike = (what: string, ids: string[], worded: string[]): string[] => [
  ...ids.filter((id, index) => ids.indexOf(id) < index).map((id) => `the ${what} ${id} is there twice`),
  ...ids.filter((id) => !worded.includes(id)).map((id) => `the ${what} ${id} has no words`),
  ...worded.filter((id) => !ids.includes(id)).map((id) => `there are words for a ${what} ${id}, which is not there`),
];

/** Works, groups, conditions and tables that no row names. */
function idleParts(given: SheetFile, rows: Cells[]): string[] {
  const { set, words: _said, ...tables } = given;
  const swapped = Object.values(tables as Record<string, Table | TableAsIn>).flatMap((one) => ('as in' in one && one.but ? [one.but] : []));
  const named = (column: string) => [...rows, ...swapped].flatMap((cells) => listOf(cells, column));
  const inFigures = rows.map((cells) => ` ${cellOf(cells, 'figure')},`).join(' ');
  const idle = (what: string, names: object | undefined, used: (name: string) => boolean) =>
    Object.keys(names ?? {})
      .filter((name) => !used(name))
      .map((name) => `no row names the ${what} ${name}`);
  return [
    ...idle('work', set.works, (name) => named('work').includes(name)),
    ...idle('group', set.groups, (name) => named('product').includes(name)),
    ...idle('condition', set.asks, (name) => named('asks').includes(name)),
    ...idle('table', set.holds, (name) => inFigures.includes(` ${name},`)),
  ];
}

/** Keys written twice in one object, of which JSON would silently keep the last. Reads files indented as ours are. */
export function keysTwice(text: string): string[] {
  const open: Set<string>[] = [];
  return text.split('\n').flatMap((line) => {
    const [, indent, key] = /^( *)"([^"]+)":/.exec(line) ?? [];
    if (indent === undefined || key === undefined) return [];
    open.length = Math.min(open.length, indent.length + 1);
    const keys = (open[indent.length] ??= new Set());
    if (keys.has(key)) return [key];
    keys.add(key);
    return [];
  });
}

/** The text of a file with the cells of each table under one another. */
export function inLine(text: string): string {
  const table: { at: number; indent: string; cells: string[] }[] = [];
  const lines = text.split('\n');
  const putInLine = () => {
    const widths = table[0]?.cells.map((_, column) => Math.max(...table.map(({ cells }) => cells[column]?.length ?? 0))) ?? [];
    for (const { at, indent, cells } of table.splice(0)) {
      const padded = cells.map((cell, column) => (column < cells.length - 1 ? `${cell},`.padEnd((widths[column] ?? 0) + 2) : cell));
      lines[at] = `${indent}[${padded.join('')}]${lines[at]?.endsWith(',') ? ',' : ''}`;
    }
  };
  for (const [at, line] of text.split('\n').entries()) {
    const [, indent, row] = /^( +)(\[.*\]),?$/.exec(line) ?? [];
    if (/"columns":$/.test(line)) putInLine();
    if (indent !== undefined && row !== undefined)
      table.push({ at, indent, cells: (JSON.parse(row) as string[]).map((cell) => JSON.stringify(cell)) });
  }
  putInLine();
  return lines.join('\n');
}
