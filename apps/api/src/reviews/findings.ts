import {
  clarificationsOf,
  flagWords,
  type ControlPointOnLot,
  type Deviation,
  type Finding,
  type Flag,
  type Lot,
} from '@larderbook/contracts';
import type { StrangeAllergens } from './allergens-beside-formula';

/**
 * What the pre-shipment review of a lot finds, in the order of the work: is the record complete, was every limit met,
 * and where one was not, is it dealt with (9 CFR 417.5(c)). Pure: the same records give the same findings.
 * @param deviations all that stand on the lot, those of its deliveries and reworked lots too
 * @param strange allergens of ingredients that were weighed in beside the formula
 */
export const findings = (
  lot: Lot,
  deviations: readonly Deviation[],
  strange: readonly StrangeAllergens[] = [],
): Finding[] => [
  ...whatIsMissing(lot),
  ...lot.controlPoints.map(controlPointFinding),
  ...(lot.unjudged ?? []).filter(isNotSaid(deviations)).map(unjudgedFinding),
  ...deviations.map(deviationFinding),
  ...strange.map(allergenFinding),
  ...entryFindings(lot),
  ...lot.controlPoints.flatMap(clarificationFindings),
];

export const isReady = (found: readonly Finding[]): boolean => found.every(({ blocks }) => !blocks);

function whatIsMissing({ inputs, packings, targets }: Lot): Finding[] {
  const found: Finding[] = [];
  if (inputs.every(({ amendedBy }) => amendedBy)) {
    found.push({
      about: 'input',
      kind: 'missing',
      what: 'Nothing has been put into this lot.',
      next: 'Put in the meat from its delivery.',
      blocks: true,
    });
  }
  for (const { part, itemName, weighedGrams } of targets) {
    if (part === 'meat' || weighedGrams > 0) continue;
    const what = `${itemName} stands in the formula and was not weighed in.`;
    // Left out on purpose is for the reviewer to judge; what a limit depends on is judged at its control point.
    found.push({
      about: 'weighing',
      kind: 'missing',
      what,
      next: 'Weigh it in, or say in the statement why it was left out.',
      blocks: false,
    });
  }
  if (packings.length === 0) {
    found.push({
      about: 'entry',
      kind: 'missing',
      what: 'Nothing of this lot has been packed.',
      next: 'Pack it: the review is of what will leave.',
      blocks: true,
    });
  }
  return found;
}

function controlPointFinding(point: ControlPointOnLot): Finding {
  const { controlPointId, name, monitoring } = point.controlPoint;
  const about = { about: 'control-point' as const, controlPointId };
  const because = point.judged.flatMap(({ verdict }) => (verdict.kind === 'met' ? [] : verdict.because)).join(' ');
  switch (point.stands) {
    case 'met':
      return { ...about, kind: 'met', what: `${name}: every limit is met.`, blocks: false };
    case 'not-started':
      return { ...about, kind: 'missing', what: `${name}: nothing was recorded.`, next: monitoring.what, blocks: true };
    case 'running':
      return {
        ...about,
        kind: 'missing',
        what: `${name}: still running.`,
        next: 'Finish it, then review.',
        blocks: true,
      };
    default:
      if (point.settled)
        return {
          ...about,
          kind: 'settled',
          what: `${name}: ${point.stands}, and settled. ${because}`.trim(),
          blocks: false,
        };
      return {
        ...about,
        kind: point.stands,
        what: `${name}: ${point.stands}. ${because}`.trim(),
        next: nextFor(point),
        blocks: true,
      };
  }
}

type Unjudged = NonNullable<Lot['unjudged']>[number];

/** While its deviation is open, that one says it. */
const isNotSaid = (deviations: readonly Deviation[]) => ({ substance }: Unjudged) =>
  !deviations.some(({ open, description }) => open && description.toLowerCase().includes(substance));

function unjudgedFinding({ substance, verdict, settled }: Unjudged): Finding {
  const what = [verdict.because, ...verdict.notes].join(' ');
  if (settled) return { about: 'weighing', kind: 'settled', what, blocks: false };
  const next = `Open a deviation that names ${substance}, settle it and close it.`;
  return { about: 'weighing', kind: 'undetermined', what, next, blocks: true };
}

const allergenFinding = ({ itemName, allergens }: StrangeAllergens): Finding => ({
  about: 'weighing',
  kind: 'flagged',
  what:
    `${itemName} went in beside the formula and brings ${allergens.join(', ')}, ` +
    'which nothing in the formula holds.',
  next: 'Make sure that the label of these packages names it, or keep them back.',
  blocks: false,
});

const nextFor = ({ openDeviationId }: ControlPointOnLot): string =>
  openDeviationId ? 'Settle its deviation and close it.' : 'Open a deviation for it, settle it and close it.';

function deviationFinding({
  deviationId,
  controlPoint,
  number,
  description,
  open,
  actions,
  dispositions,
  undecided,
  covered,
}: Deviation): Finding {
  const about = { about: 'deviation' as const, deviationId, controlPointId: controlPoint?.controlPointId };
  const what = `Deviation ${number}: ${description}`;
  if (!open)
    return {
      ...about,
      kind: 'settled',
      what: `${what} Closed; ${sayDecided(dispositions)}.`,
      blocks: false,
    };
  const next =
    actions.length === 0
      ? 'Record the corrective action.'
      : covered
        ? 'Close it.'
        : `Decide what becomes of ${undecided.value} ${undecided.unit}.`;
  return { ...about, kind: 'open', what, next, blocks: true };
}

/** "condemn 2.8 lb, release 25.9 lb" */
const sayDecided = (dispositions: Deviation['dispositions']): string =>
  dispositions
    .flatMap(({ decision, weight, voided }) => (voided ? [] : `${decision} ${weight.value} ${weight.unit}`))
    .join(', ') ||
  'there was no product to decide about';

type Entry = {
  what: string;
  controlPointId?: string;
  flags: Flag[];
  made: { name: string };
  amendedBy?: string;
  amends?: string;
  reason?: string;
};

/** What was odd about an entry, and what was corrected: for the reviewer to read, no obstacle by itself. */
function entryFindings(lot: Lot): Finding[] {
  const entries: Entry[] = [
    ...lot.inputs.map((input) => ({ ...input, what: `Input of ${input.from.code}` })),
    ...lot.weighings.map((weighing) => ({ ...weighing, what: `Weighing of ${weighing.item.name}` })),
    ...lot.controlPoints.flatMap(({ controlPoint, readings }) =>
      readings.map((reading) => ({ ...reading, what: `Reading at ${controlPoint.name}` })),
    ),
    ...lot.packings.map((packing) => ({ ...packing, what: `Packing ${packing.code}` })),
  ];
  return entries.flatMap((entry) => {
    const oddities = entry.amendedBy ? [] : entry.flags.map((flag) => flagWords[flag]);
    if (entry.amends) oddities.push(`corrects an earlier entry (${entry.reason})`);
    if (oddities.length === 0) return [];
    const what = `${entry.what} by ${entry.made.name}: ${oddities.join('; ')}.`;
    return [
      { about: 'entry' as const, kind: 'flagged' as const, what, blocks: false, controlPointId: entry.controlPointId },
    ];
  });
}

/** What was said of readings, each time it was said, and of how many: for the reviewer to judge. */
function clarificationFindings({ controlPoint, readings }: ControlPointOnLot): Finding[] {
  const { controlPointId, name } = controlPoint;
  return clarificationsOf(readings).map(({ word, reason, made, readings: of }) => {
    const what = `${of.length === 1 ? 'A reading' : `${of.length} readings`} at ${name}: ${word}. ${reason} (${made.name})`;
    return { about: 'entry', kind: 'flagged', what, blocks: false, controlPointId };
  });
}
