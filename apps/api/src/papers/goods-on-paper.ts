import type { Lot, PlanContent } from '@larderbook/contracts';
import type { LossData, LotInputData, PackageData, WeighingData } from '@larderbook/documents';
import { massOf } from '@larderbook/haccp';
import type { Deviation } from '@larderbook/contracts';
import { removedAs } from '../lots/removed-as';
import { massOfGrams } from '../platform/kept-weight';
import { numberIn } from './control-points-on-paper';
import { amendmentsOf, corrected } from './corrected';
import { flagsOnPaper } from './flags-on-paper';
import { judgedOnPaper } from './limits-on-paper';
import { formatDifferenceTo, formatEntered, formatTotal, formatWeight } from './format-weight';
import type { Telling } from './telling';

type Input = Lot['inputs'][number];
type Weighing = Lot['weighings'][number];
export type Delivered = { establishmentNumber?: string; receivedAt: number };

export const inputsOnPaper = ({ inputs }: Lot, deliveries: ReadonlyMap<string, Delivered>, say: Telling['say']): LotInputData[] =>
  corrected(inputs, ({ inputId }) => inputId).map((one) => {
    const { from, weight, trimmed, made, flags } = one.entry;
    const cut = massOf(weight) - massOf(trimmed);
    return {
      item: from.what,
      supplier: from.supplier,
      supplierLot: from.supplierLot,
      reworkOf: from.lotId ? from.code : undefined,
      ...deliveries.get(from.receiptId ?? ''),
      taken: formatEntered(weight),
      trimmings: cut > 0n ? formatWeight(cut, weight.unit) : undefined,
      flags: flagsOnPaper(flags, say),
      by: made.name,
      at: Date.parse(made.at),
      enteredAt: Date.parse(made.recordedAt),
      amendments: amendmentsOf(one, {
        [say('field-from')]: ({ from: { code } }: Input) => code,
        [say('field-weight')]: (input: Input) => formatEntered(input.weight),
        [say('field-trimmed')]: (input: Input) => formatEntered(input.trimmed),
      }),
    };
  });

export const weighingsOnPaper = ({ weighings }: Lot, plan: PlanContent, own: readonly Deviation[], telling: Telling): WeighingData[] =>
  corrected(weighings, ({ weighingId }) => weighingId).map((one) => {
    const { item, itemBefore, receipt, weight, fractionPercent, fractionBefore, targetGrams, controlPointId, judged, flags, made } =
      one.entry;
    const target = targetGrams === undefined ? undefined : massOfGrams(targetGrams);
    const { say } = telling;
    const parts = judgedOnPaper(judged, controlPointId, own, telling);
    const strength = fractionPercent === undefined ? '' : strengthOf(fractionPercent, parts[0]?.what, say);
    const content = fractionBefore === undefined ? undefined : `${fractionBefore} %`;
    return {
      ingredient: item.name,
      detail: [strength, receipt && say('lot-number', { lot: receipt.supplierLot })].filter(Boolean).join(', ') || undefined,
      before: { ingredient: itemBefore, content },
      target: target === undefined ? '–' : formatWeight(target, weight.unit),
      weighed: formatEntered(weight),
      difference: target === undefined ? undefined : formatDifferenceTo(target, weight, say),
      controlPoint: pointAt(controlPointId, plan, say),
      judged: parts,
      flags: flagsOnPaper(flags, say),
      by: made.name,
      at: Date.parse(made.at),
      enteredAt: Date.parse(made.recordedAt),
      amendments: amendmentsOf(one, {
        [say('field-item')]: (weighing: Weighing) => weighing.item.name,
        [say('field-weight')]: (weighing: Weighing) => formatEntered(weighing.weight),
        [say('field-delivery')]: (weighing: Weighing) => weighing.receipt?.code ?? say('none-named'),
      }),
    };
  });

function strengthOf(percent: number, substance: string | undefined, say: Telling['say']): string {
  const share = `${percent} %`;
  return substance ? say('share-of', { share, substance }) : say('share-of-substance', { share });
}

function pointAt(controlPointId: string | undefined, plan: PlanContent, say: Telling['say']): string | undefined {
  const point = plan.controlPoints.find((one) => one.controlPointId === controlPointId);
  return point && numberIn(point, plan, say);
}

export const packagesOnPaper = ({ packings }: Lot, day: (day: string) => string): PackageData[] =>
  packings.map(({ code, count, net, useBy, made }) => ({
    code,
    count,
    net: formatEntered(net),
    total: formatTotal(count, net),
    useBy: day(useBy),
    by: made.name,
    at: Date.parse(made.at),
    enteredAt: Date.parse(made.recordedAt),
  }));

export const lossesOnPaper = ({ removals }: Lot, { said }: Telling): LossData[] =>
  removals.map(({ kind, weight, note, made }) => ({
    what: said(removedAs(kind)),
    quantity: formatEntered(weight),
    why: note || undefined,
    by: made.name,
    at: Date.parse(made.at),
    enteredAt: Date.parse(made.recordedAt),
  }));
