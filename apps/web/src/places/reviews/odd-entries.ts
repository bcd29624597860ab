import { clarificationsOf, type Flag, type Lot } from '@larderbook/contracts';
import { formatRead } from '@larderbook/haccp';

/** A correction has what stood there `before` and `after`. */
export type OddEntry = {
  /** As in "Weighing of Salt", "12 readings at Chilling". */
  what: string;
  remark: string;
  by: string;
  first: string;
  last: string;
  correction?: { before: string; after: string };
};

type Entered = Pick<Lot, 'inputs' | 'weighings' | 'packings' | 'corrections'> & {
  controlPoints: { controlPoint: { name: string }; readings: Reading[] }[];
};
type Reading = Lot['controlPoints'][number]['readings'][number];
type SayFlag = (flag: Flag) => string;

type Entry = {
  id: string;
  kind: string;
  of: string;
  value: string;
  flags: Flag[];
  made: { name: string; at: string };
  amends?: string;
  amendedBy?: string;
  reason?: string;
  voided?: { reason: string; made: { name: string; at: string } };
};

/** Corrections one by one, then what is flagged: entries alike in kind, flags and person stand on one line. */
export function oddEntries(lot: Entered, sayFlag: SayFlag): OddEntry[] {
  const entries = entriesOf(lot);
  const corrections = entries.filter(({ amends }) => amends !== undefined).map((entry) => correctionOf(entry, entries, sayFlag));
  const flagged = entries.filter(({ flags, amends, amendedBy }) => flags.length > 0 && amends === undefined && amendedBy === undefined);
  const alike = groupBy(flagged, ({ kind, of, flags, made }) => [kind, kind === 'reading' ? of : '', made.name, ...flags].join('\n'));
  return [
    ...corrections,
    ...entries.flatMap(voidedLine),
    ...lot.corrections.map(goodsLine),
    ...lot.controlPoints.flatMap(clarifiedLines),
    ...alike.map((each) => flaggedLine(each, sayFlag)),
  ];
}

const voidedLine = ({ kind, of, value, voided }: Entry): OddEntry[] =>
  voided
    ? [{ ...lineOf(`${capital(kind)} ${of}`, `voided; ${voided.reason}`, voided.made), correction: { before: value, after: '' } }]
    : [];

/** A correction of a delivery, a stage, goods or an instrument has no line among the entries. */
const goodsLine = ({ what, voided, reason, made }: Lot['corrections'][number]): OddEntry =>
  lineOf(what, `${voided ? 'voided' : 'corrected'}; ${reason}`, made);

const lineOf = (what: string, remark: string, { name, at }: { name: string; at: string }): OddEntry => ({
  what,
  remark,
  by: name,
  first: at,
  last: at,
});

/** One line for each time something was said of readings. */
function clarifiedLines({ controlPoint, readings }: Entered['controlPoints'][number]): OddEntry[] {
  return clarificationsOf(readings).map(({ word, reason, made, readings: of }) => ({
    what: `${of.length === 1 ? 'Reading' : `${of.length} readings`} at ${controlPoint.name}: ${of.map(({ entered }) => formatEntered(entered)).join(', ')}`,
    remark: `${word}; ${reason}`,
    by: made.name,
    first: made.at,
    last: made.at,
  }));
}

function entriesOf({ inputs, weighings, controlPoints, packings }: Entered): Entry[] {
  return [
    ...inputs.map((input) => ({
      ...input,
      id: input.inputId,
      kind: 'input',
      of: `of ${input.from.code}`,
      value: say(input.weight),
    })),
    ...weighings.map((weighing) => ({
      ...weighing,
      id: weighing.weighingId,
      kind: 'weighing',
      of: `of ${weighing.item.name}`,
      value: say(weighing.weight),
    })),
    ...controlPoints.flatMap(({ controlPoint, readings }) =>
      readings.map((reading) => ({
        ...reading,
        id: reading.readingId,
        kind: 'reading',
        of: `at ${controlPoint.name}`,
        value: formatEntered(reading.entered),
      })),
    ),
    ...packings.map((packing) => ({
      ...packing,
      id: packing.packingId,
      kind: 'packing',
      of: packing.code,
      value: `${packing.count} × ${say(packing.net)}`,
    })),
  ];
}

function correctionOf(entry: Entry, entries: Entry[], sayFlag: SayFlag): OddEntry {
  const { kind, of, made, value, reason, flags } = entry;
  const before = entries.find(({ id }) => id === entry.amends);
  return {
    what: `${capital(kind)} ${of}`,
    remark: ['corrected', reason, ...flags.map(sayFlag)].filter(Boolean).join('; '),
    by: made.name,
    first: made.at,
    last: made.at,
    correction: { before: before?.value ?? '', after: value },
  };
}

function flaggedLine(alike: Entry[], sayFlag: SayFlag): OddEntry {
  const [entry, ...others] = alike;
  const { kind = '', of = '', flags = [] } = entry ?? {};
  const times = alike.map(({ made }) => made.at).sort((a, b) => Date.parse(a) - Date.parse(b));
  const many = kind === 'reading' ? `${alike.length} readings ${of}` : `${alike.length} ${kind}s`;
  return {
    what: others.length > 0 ? many : `${capital(kind)} ${of}`,
    remark: flags.map(sayFlag).join('; '),
    by: entry?.made.name ?? '',
    first: times[0] ?? '',
    last: times.at(-1) ?? '',
  };
}

function groupBy(entries: Entry[], keyOf: (entry: Entry) => string): Entry[][] {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) groups.set(keyOf(entry), [...(groups.get(keyOf(entry)) ?? []), entry]);
  return [...groups.values()];
}

function formatEntered(entered: Reading['entered']): string {
  if ('answer' in entered) return [entered.answer ? 'yes' : 'no', entered.seen].filter(Boolean).join(': ');
  return formatRead(entered);
}
const say = ({ value, unit }: { value: number; unit: string }): string => `${value} ${unit}`;
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
