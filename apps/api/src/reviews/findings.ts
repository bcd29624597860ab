import type { ControlPointOnLot, Deviation, Finding, Lot } from '@larderbook/contracts';
import type { MassUnit } from '@larderbook/haccp';
import type { LotWeights } from '../lots/lot-weights.queries';
import { toldAll } from '../lots/told-worst';
import { tell } from '../platform/tell';
import type { StrangeAllergens } from './allergens-beside-formula';
import { entryFindings } from './entry-findings';
import { readingFindings } from './reading-findings';
import { shipmentFindings } from './shipment-findings';
import { weightFindings } from './weight-findings';

export type Beside = {
  deviations: readonly Deviation[];
  strange: readonly StrangeAllergens[];
  weights: LotWeights;
  unit: MassUnit;
};

/**
 * 9 CFR 417.5(c): is the record complete, every limit met, each miss dealt with? The same records give the same
 * findings.
 */
export const findings = (lot: Lot, { deviations, strange, weights, unit }: Beside): Finding[] => [
  ...whatIsMissing(lot),
  ...lot.controlPoints.map(controlPointFinding),
  ...(lot.unjudged ?? []).filter(isNotSaid(deviations)).map(unjudgedFinding),
  ...deviations.map(deviationFinding),
  ...strange.map(allergenFinding),
  ...weightFindings(lot, weights, unit),
  ...shipmentFindings(lot),
  ...lot.controlPoints.flatMap(readingFindings),
  ...entryFindings(lot),
];

export const isReady = (found: readonly Finding[]): boolean => found.every(({ blocks }) => !blocks);

function whatIsMissing({ inputs, packings }: Lot): Finding[] {
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
  const because = toldAll(
    point.judged.filter(({ verdict }) => verdict.kind !== 'met'),
    tell,
  )
    .map(({ because }) => because)
    .join(' ');
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

/** An open deviation already says it. */
const isNotSaid =
  (deviations: readonly Deviation[]) =>
  ({ substance }: Unjudged) =>
    !deviations.some((one) => one.open && one.substance === substance);

function unjudgedFinding({ substance, verdict, settled }: Unjudged): Finding {
  const told = tell(verdict);
  const what = [told.because, ...told.notes].join(' ');
  if (settled) return { about: 'weighing', kind: 'settled', what, blocks: false };
  const next = `Open a deviation about ${substance}, settle it and close it.`;
  return { about: 'weighing', kind: 'undetermined', what, next, blocks: true };
}

const allergenFinding = ({ itemName, allergens }: StrangeAllergens): Finding => ({
  about: 'weighing',
  kind: 'flagged',
  what: `${itemName} went in beside the formula and brings ${allergens.join(', ')}, ` + 'which nothing in the formula holds.',
  next: 'Make sure that the label of these packages names it, or keep them back.',
  blocks: false,
});

function nextFor({ controlPoint, openDeviationId, endedAt }: ControlPointOnLot): string {
  if (openDeviationId) return 'Settle its deviation and close it.';
  if (controlPoint.takenAs === 'curve' && !endedAt) return 'Finish it, then review.';
  return 'Open a deviation for it, settle it and close it.';
}

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
  dispositions.flatMap(({ decision, weight, voided }) => (voided ? [] : `${decision} ${weight.value} ${weight.unit}`)).join(', ') ||
  'there was no product to decide about';
