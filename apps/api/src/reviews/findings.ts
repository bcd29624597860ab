import type { Deviation, Finding, Lot } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import type { MassUnit } from '@larderbook/haccp';
import type { LotWeights } from '../lots/lot-weights.queries';
import type { Unjudged } from '../lots/where-a-lot-stands';
import { named, sentence } from '../platform/account';
import type { StrangeAllergens } from './allergens-beside-formula';
import { controlPointFinding } from './control-point-findings';
import { deviationFinding } from './deviation-findings';
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
  const missing = { kind: 'missing', blocks: true } as const;
  return [
    ...(inputs.every(({ amendedBy }) => amendedBy)
      ? [{ ...missing, about: 'input' as const, what: [sentence('nothing-put-in')], next: [sentence('put-in-the-meat')] }]
      : []),
    ...(packings.length === 0
      ? [{ ...missing, about: 'entry' as const, what: [sentence('nothing-packed')], next: [sentence('pack-it')] }]
      : []),
  ];
}

/** An open deviation already says it. */
const isNotSaid =
  (deviations: readonly Deviation[]) =>
  ({ substance }: Unjudged) =>
    !deviations.some((one) => one.open && one.substance === substance);

function unjudgedFinding({ substance, verdict, settled }: Unjudged): Finding {
  const what: Finding['what'] = [{ verdict, tells: 'because and notes' }];
  if (settled) return { about: 'weighing', kind: 'settled', what, blocks: false };
  const next = [sentence('open-about-substance', { substance: named(codeOf('substance', substance)) })];
  return { about: 'weighing', kind: 'undetermined', what, next, blocks: true };
}

const allergenFinding = ({ itemName, allergens }: StrangeAllergens): Finding => ({
  about: 'weighing',
  kind: 'flagged',
  what: [sentence('allergens-beside', { item: itemName, allergens: allergens.map((one) => named(codeOf('allergen', one))) })],
  next: [sentence('look-at-the-label')],
  blocks: false,
});
