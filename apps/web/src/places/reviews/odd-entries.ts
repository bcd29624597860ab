import { clarificationsOf, type Flag, type Lot } from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { codeOf, sayAnswered, type SayOf, type TellSaid } from '@larderbook/messages';
import { useSaid } from '../../ui/use-said';
import { useFigures, useSay } from '../../ui/voice';

/** A correction has what stood there `before` and `after`. */
export type OddEntry = {
  /** As in "Weighing of Salt", "12 readings at Chilling". */
  what: string;
  remarks: string[];
  by: string;
  first: string;
  last: string;
  correction?: { before: string; after: string };
};

export type OddVoice = {
  say: SayOf<'reviews'>;
  sayEntry: SayOf<'entries'>;
  tellSaid: TellSaid;
  quantity: ReturnType<typeof useFigures>['quantity'];
};
export const useOddVoice = (): OddVoice => ({
  say: useSay('reviews'),
  sayEntry: useSay('entries'),
  tellSaid: useSaid(),
  quantity: useFigures().quantity,
});

type Entered = Pick<Lot, 'inputs' | 'weighings' | 'packings' | 'corrections'> & {
  controlPoints: { controlPoint: { name: string }; readings: Reading[] }[];
};
type Reading = Lot['controlPoints'][number]['readings'][number];

type Entry = {
  id: string;
  called: (count: number) => string;
  /** Flagged alike, they stand on one line. */
  alikeBy: string;
  value: string;
  flags: Flag[];
  made: { name: string; at: string };
  amends?: string;
  amendedBy?: string;
  reason?: string;
  voided?: { reason: string; made: { name: string; at: string } };
};

/** Corrections one by one, then what is flagged: entries alike in kind, flags and person stand on one line. */
export function oddEntries(lot: Entered, voice: OddVoice): OddEntry[] {
  const { say, tellSaid } = voice;
  const entries = entriesOf(lot, voice);
  const corrections = entries.filter(({ amends }) => amends !== undefined).map((entry) => correctionOf(entry, entries, voice));
  const flagged = entries.filter(({ flags, amends, amendedBy }) => flags.length > 0 && amends === undefined && amendedBy === undefined);
  const alike = groupBy(flagged, ({ alikeBy, flags, made }) => [alikeBy, made.name, ...flags].join('\n'));
  return [
    ...corrections,
    ...entries.flatMap((entry) => voidedLine(entry, say)),
    ...lot.corrections.map(({ what, voided, reason, made }) =>
      lineOf(tellSaid(what), [say(voided ? 'odd-voided' : 'odd-corrected', { reason: tellSaid(reason) })], made),
    ),
    ...lot.controlPoints.flatMap((point) => clarifiedLines(point, voice)),
    ...alike.map((each) => flaggedLine(each, voice)),
  ];
}

const voidedLine = ({ called, value, voided }: Entry, say: OddVoice['say']): OddEntry[] =>
  voided
    ? [{ ...lineOf(called(1), [say('odd-voided', { reason: voided.reason })], voided.made), correction: { before: value, after: '' } }]
    : [];

const lineOf = (what: string, remarks: string[], { name, at }: { name: string; at: string }): OddEntry => ({
  what,
  remarks,
  by: name,
  first: at,
  last: at,
});

/** One line for each time something was said of readings. */
function clarifiedLines({ controlPoint, readings }: Entered['controlPoints'][number], voice: OddVoice): OddEntry[] {
  const { say, sayEntry } = voice;
  return clarificationsOf(readings).map(({ word, reason, made, readings: of }) => {
    const entry = sayEntry('entry-readings', { count: of.length, point: controlPoint.name });
    const values = of.map(({ entered }) => enteredValue(entered, voice));
    return lineOf(say('odd-values', { entry, values }), [sayEntry(codeOf('word', word)), reason], made);
  });
}

function entriesOf({ inputs, weighings, controlPoints, packings }: Entered, voice: OddVoice): Entry[] {
  const { say, sayEntry, quantity } = voice;
  const weight = ({ value, unit }: EnteredMass) => quantity({ value, unit });
  return [
    ...inputs.map((input) => ({
      ...input,
      id: input.inputId,
      called: (count: number) => (count > 1 ? sayEntry('entry-inputs', { count }) : sayEntry('entry-input', { code: input.from.code })),
      alikeBy: 'input',
      value: weight(input.weight),
    })),
    ...weighings.map((weighing) => ({
      ...weighing,
      id: weighing.weighingId,
      called: (count: number) =>
        count > 1 ? sayEntry('entry-weighings', { count }) : sayEntry('entry-weighing', { item: weighing.item.name }),
      alikeBy: 'weighing',
      value: weight(weighing.weight),
    })),
    ...controlPoints.flatMap(({ controlPoint: { name: point }, readings }) =>
      readings.map((reading) => ({
        ...reading,
        id: reading.readingId,
        called: (count: number) => sayEntry('entry-readings', { count, point }),
        alikeBy: `reading\n${point}`,
        value: enteredValue(reading.entered, voice),
      })),
    ),
    ...packings.map((packing) => ({
      ...packing,
      id: packing.packingId,
      called: (count: number) => (count > 1 ? sayEntry('entry-packings', { count }) : sayEntry('entry-packing', { code: packing.code })),
      alikeBy: 'packing',
      value: say('count-weight', { count: String(packing.count), weight: weight(packing.net) }),
    })),
  ];
}

function correctionOf({ called, made, value, reason, flags, amends }: Entry, entries: Entry[], { say, sayEntry }: OddVoice): OddEntry {
  const before = entries.find(({ id }) => id === amends);
  const why = reason ? say('odd-corrected', { reason }) : say('odd-corrected-only');
  return {
    ...lineOf(called(1), [why, ...flags.map((flag) => sayEntry(flag))], made),
    correction: { before: before?.value ?? '', after: value },
  };
}

function flaggedLine(alike: [Entry, ...Entry[]], { sayEntry }: OddVoice): OddEntry {
  const [{ called, flags, made }] = alike;
  const times = alike.map((entry) => entry.made.at).sort((a, b) => Date.parse(a) - Date.parse(b));
  return {
    ...lineOf(
      called(alike.length),
      flags.map((flag) => sayEntry(flag)),
      made,
    ),
    first: times[0] ?? '',
    last: times.at(-1) ?? '',
  };
}

function groupBy(entries: Entry[], keyOf: (entry: Entry) => string): [Entry, ...Entry[]][] {
  const groups = new Map<string, [Entry, ...Entry[]]>();
  for (const entry of entries) {
    const alike = groups.get(keyOf(entry));
    if (alike) alike.push(entry);
    else groups.set(keyOf(entry), [entry]);
  }
  return [...groups.values()];
}

function enteredValue(entered: Reading['entered'], { sayEntry, quantity }: OddVoice): string {
  if ('unit' in entered) return quantity(entered);
  const answer = entered.answer ? 'yes' : 'no';
  const seen = sayAnswered(entered, sayEntry);
  return seen ? sayEntry(`${answer}-seen`, { seen }) : sayEntry(answer);
}
