import { clarificationsOf, type ControlPointOnLot, type Finding, type Flag, type Lot } from '@larderbook/contracts';
import type { Coded, Phrase } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { named, sentence } from '../platform/account';

type Entry = {
  kind: 'input' | 'weighing' | 'reading' | 'packing';
  /** What it is called by itself. */
  one: Phrase;
  /** What so many alike are called; readings are alike at one control point only. */
  many: (count: number) => Phrase;
  controlPointId?: string;
  flags: Flag[];
  made: { name: string };
  amendedBy?: string;
  amends?: string;
  reason?: string;
  voided?: { reason: string; made: { name: string } };
};

/** None of these blocks. Entries alike in kind, flags and person are one finding, as on screen. */
export const entryFindings = (lot: Lot): Finding[] => {
  const entries = entriesOf(lot);
  return [
    ...entries.filter(({ amends, voided }) => amends && !voided).map(correctionFinding),
    ...entries.flatMap(voidedFinding),
    ...lot.corrections.map(goodsFinding),
    ...lot.controlPoints.flatMap(clarificationFindings),
    ...alike(entries).map(flaggedFinding),
  ];
};

const entriesOf = (lot: Lot): Entry[] => [
  ...lot.inputs.map((input) => ({
    ...input,
    kind: 'input' as const,
    one: named('entry-input', { code: input.from.code }),
    many: (count: number) => named('entry-inputs', { count }),
  })),
  ...lot.weighings.map((weighing) => ({
    ...weighing,
    kind: 'weighing' as const,
    one: named('entry-weighing', { item: weighing.item.name }),
    many: (count: number) => named('entry-weighings', { count }),
  })),
  ...lot.controlPoints.flatMap(({ controlPoint: { name }, readings }) =>
    readings.map((reading) => ({
      ...reading,
      kind: 'reading' as const,
      one: named('entry-reading', { point: name }),
      many: (count: number) => named('entry-readings', { count, point: name }),
    })),
  ),
  ...lot.packings.map((packing) => ({
    ...packing,
    kind: 'packing' as const,
    one: named('entry-packing', { code: packing.code }),
    many: (count: number) => named('entry-packings', { count }),
  })),
];

const found = (what: Coded, controlPointId?: string): Finding => ({
  about: 'entry',
  kind: 'flagged',
  what: [what],
  blocks: false,
  controlPointId,
});

const flagged = (flags: readonly Flag[]): Phrase[] => flags.map((flag) => named(flag));

function correctionFinding({ one: entry, flags, made, amendedBy, reason = '', controlPointId }: Entry): Finding {
  const figures = { entry, who: made.name, reason };
  const isFlagged = flags.length > 0 && !amendedBy;
  const what = isFlagged ? sentence('entry-corrects-flagged', { ...figures, flags: flagged(flags) }) : sentence('entry-corrects', figures);
  return found(what, controlPointId);
}

const voidedFinding = ({ one: entry, made, voided, controlPointId }: Entry): Finding[] =>
  voided ? [found(sentence('entry-voided', { entry, who: made.name, by: voided.made.name, reason: voided.reason }), controlPointId)] : [];

/** Corrections of deliveries, stages, goods and instruments have no line among the entries. */
const goodsFinding = ({ what: thing, voided, reason, made, controlPointId }: Lot['corrections'][number]): Finding =>
  found(sentence(voided ? 'thing-voided' : 'thing-corrected', { thing, who: made.name, reason }), controlPointId);

function alike(entries: readonly Entry[]): Entry[][] {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const { kind, controlPointId = '', flags, made, amends, amendedBy, voided } = entry;
    if (flags.length === 0 || amends || amendedBy || voided) continue;
    const key = [kind, kind === 'reading' ? controlPointId : '', made.name, ...flags].join('\n');
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.values()];
}

function flaggedFinding(entries: Entry[]): Finding {
  const [{ one, many, flags, made, controlPointId }] = entries as [Entry];
  const entry = entries.length > 1 ? many(entries.length) : one;
  const isOfOnePoint = entries.every((each) => each.controlPointId === controlPointId);
  return found(sentence('entry-flagged', { entry, who: made.name, flags: flagged(flags) }), isOfOnePoint ? controlPointId : undefined);
}

function clarificationFindings({ controlPoint, readings }: ControlPointOnLot): Finding[] {
  const { controlPointId, name: point } = controlPoint;
  return clarificationsOf(readings).map(({ word, reason, made, readings: { length: count } }) => {
    const entry = named('entry-readings', { count, point });
    return found(sentence('entry-clarified', { entry, word: named(codeOf('word', word)), reason, who: made.name }), controlPointId);
  });
}
