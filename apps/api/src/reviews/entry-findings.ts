import { clarificationsOf, type ControlPointOnLot, type Finding, type Flag, type Lot } from '@larderbook/contracts';
import { allWords } from '@larderbook/messages/all';

type Entry = {
  kind: string;
  of: string;
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
  ...lot.inputs.map((input) => ({ ...input, kind: 'input', of: `of ${input.from.code}` })),
  ...lot.weighings.map((weighing) => ({ ...weighing, kind: 'weighing', of: `of ${weighing.item.name}` })),
  ...lot.controlPoints.flatMap(({ controlPoint, readings }) =>
    readings.map((reading) => ({ ...reading, kind: 'reading', of: `at ${controlPoint.name}` })),
  ),
  ...lot.packings.map((packing) => ({ ...packing, kind: 'packing', of: packing.code })),
];

const found = (what: string, controlPointId?: string): Finding => ({
  about: 'entry',
  kind: 'flagged',
  what,
  blocks: false,
  controlPointId,
});

const sayFlags = (flags: readonly Flag[]): string[] => flags.map((flag) => allWords.entries.en[flag]);

function correctionFinding({ kind, of, flags, made, amendedBy, reason, controlPointId }: Entry): Finding {
  const oddities = [...(amendedBy ? [] : sayFlags(flags)), `corrects an earlier entry (${reason})`];
  return found(`${capital(kind)} ${of} by ${made.name}: ${oddities.join('; ')}.`, controlPointId);
}

const voidedFinding = ({ kind, of, made, voided, controlPointId }: Entry): Finding[] =>
  voided ? [found(`${capital(kind)} ${of} by ${made.name}: voided by ${voided.made.name} (${voided.reason}).`, controlPointId)] : [];

/** Corrections of deliveries, stages, goods and instruments have no line among the entries. */
const goodsFinding = ({ what, voided, reason, made, controlPointId }: Lot['corrections'][number]): Finding =>
  found(`${what}: ${voided ? 'voided' : 'corrected'} by ${made.name} (${reason}).`, controlPointId);

function alike(entries: readonly Entry[]): Entry[][] {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const { kind, of, flags, made, amends, amendedBy, voided } = entry;
    if (flags.length === 0 || amends || amendedBy || voided) continue;
    const key = [kind, kind === 'reading' ? of : '', made.name, ...flags].join('\n');
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.values()];
}

function flaggedFinding(entries: Entry[]): Finding {
  const [{ kind, of, flags, made, controlPointId }] = entries as [Entry];
  const many = kind === 'reading' ? `${entries.length} readings ${of}` : `${entries.length} ${kind}s`;
  const what = entries.length > 1 ? many : `${capital(kind)} ${of}`;
  return found(`${what} by ${made.name}: ${sayFlags(flags).join('; ')}.`, controlPointId);
}

function clarificationFindings({ controlPoint, readings }: ControlPointOnLot): Finding[] {
  const { controlPointId, name } = controlPoint;
  return clarificationsOf(readings).map(({ word, reason, made, readings: of }) => {
    const which = of.length === 1 ? 'A reading' : `${of.length} readings`;
    return found(`${which} at ${name}: ${word}. ${reason} (${made.name})`, controlPointId);
  });
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
