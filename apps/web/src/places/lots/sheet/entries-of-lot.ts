import { isOfSurroundings, ofProduct, wordOf, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { dateWords } from '../../../ui/moment';
import { sayEntered, sayProbe, sayWeight } from '../say/say-entered';
import type { Entry } from './fold-amendments';

/** Every row recorded on a lot, in words, whichever list of the reply it came in. */
export const entriesOf = (lot: Lot): Entry[] => [
  startOf(lot),
  ...lot.inputs.map(inputEntry),
  ...lot.weighings.map(weighingEntry),
  ...lot.controlPoints.flatMap(pointEntries),
  ...lot.removals.map(removalEntry),
  ...lot.packings.map(packingEntry),
  ...lot.shipments.map(shipmentEntry),
  ...lot.reviews.map(reviewEntry),
];

type Signed = { name: string; at: string; recordedAt: string };
type Made = {
  made: Signed;
  voided?: { reason: string; made: Signed };
  flags: Entry['flags'];
  amendedBy?: string;
  amends?: string;
  reason: string;
};

/** When it happened and when it was entered, and by whom. */
const signed = ({ name, at, recordedAt }: Signed) => ({ at: Date.parse(at), enteredAt: Date.parse(recordedAt), who: name });

const recorded = ({ made, flags, amendedBy, amends, reason, voided }: Made) => ({
  ...signed(made),
  voided: voided && { reason: voided.reason, who: voided.made.name },
  flags,
  amendedBy,
  amends,
  reason,
});
const derived = { flags: [], notes: [], judged: [], reason: '' };
const words = (...notes: (string | undefined | false)[]): string[] => notes.filter((note): note is string => Boolean(note));

const startOf = (lot: Lot): Entry => ({
  ...derived,
  id: lot.lotId,
  kind: 'start',
  ...signed(lot.made),
  flags: lot.flags,
  what: 'Lot started',
  notes: words(`Formula ${lot.formula.version}, plan ${lot.plan.version}`, lot.note),
});

const inputEntry = (input: Lot['inputs'][number]): Entry => ({
  ...recorded(input),
  id: input.inputId,
  kind: 'input',
  what: input.from.lotId ? `Rework: ${input.from.what}` : input.from.what,
  value: sayWeight(input.trimmed),
  judged: [],
  notes: words(
    input.trimmed.grams !== input.weight.grams && `${sayWeight(input.weight)} taken, trimmed to ${sayWeight(input.trimmed)}`,
    input.from.lotId ? `Rework of lot ${input.from.code}` : `Delivery ${input.from.code}`,
    input.from.supplier && [input.from.supplier, input.from.supplierLot && `lot ${input.from.supplierLot}`].filter(Boolean).join(', '),
  ),
});

const weighingEntry = (weighing: Lot['weighings'][number]): Entry => ({
  ...recorded(weighing),
  id: weighing.weighingId,
  kind: 'weighing',
  what: weighing.item.name,
  value: sayWeight(weighing.weight),
  judged: weighing.judged,
  controlPointId: weighing.controlPointId,
  notes: words(
    weighing.fractionBefore !== undefined && `Now known to hold ${weighing.fractionPercent} %, not ${weighing.fractionBefore} %`,
    weighing.receipt && `Delivery ${weighing.receipt.code}, lot ${weighing.receipt.supplierLot}`,
  ),
});

function pointEntries(point: ControlPointOnLot): Entry[] {
  const { controlPointId, name } = point.controlPoint;
  const readings = point.readings.map(
    (reading): Entry => ({
      ...recorded(reading),
      id: reading.readingId,
      kind: 'reading',
      what: name,
      value: shortly(reading.entered),
      judged: reading.judged,
      controlPointId,
      probe: reading.probe,
      deviationId: reading.deviationId,
      isLeftOut: wordOf(reading) === 'not of the core',
      said: reading.clarifications?.map(({ word, reason, made }) => `${word}, says ${made.name}: ${reason}`),
      notes: words(
        'seen' in reading.entered && reading.entered.seen,
        reading.probe && sayProbe(reading.probe),
        isOfSurroundings(point.controlPoint, reading) && 'Judged by no limit',
        reading.instrument?.name,
      ),
    }),
  );
  if (point.endedAt === undefined) return [...readings, ...soFar(point)];
  const end: Entry = {
    ...derived,
    id: `${controlPointId} end`,
    kind: 'stage end',
    ...(point.stageEnd ? signed(point.stageEnd.made) : { at: Date.parse(point.endedAt) }),
    rowId: point.stageEnd?.rowId,
    what: `${name} finished`,
    judged: point.judged,
    controlPointId,
  };
  return [...readings, end];
}

const shortly = (entered: ControlPointOnLot['readings'][number]['entered']) =>
  'answer' in entered ? sayEntered({ ...entered, seen: '' }) : sayEntered(entered);

/** A curve is judged as a whole and not by its last reading: while it goes on, what is decided stands under that one. */
function soFar({ controlPoint, readings, judged }: ControlPointOnLot): Entry[] {
  const { controlPointId, name, takenAs } = controlPoint;
  const last = ofProduct(controlPoint, readings).findLast(({ amendedBy }) => amendedBy === undefined);
  const decided = judged.filter(({ verdict }) => verdict.kind !== 'undetermined');
  if (takenAs !== 'curve' || !last || decided.length === 0) return [];
  const at = Date.parse(last.made.at);
  return [{ ...derived, id: `${controlPointId} so far`, kind: 'so far', at, what: `${name} so far`, judged: decided, controlPointId }];
}

const removalEntry = (removal: Lot['removals'][number]): Entry => ({
  ...derived,
  id: removal.removalId,
  kind: 'removal',
  ...signed(removal.made),
  rowId: removal.rowId,
  what: `Taken out: ${removal.kind}`,
  value: sayWeight(removal.weight),
  notes: words(removal.note),
});

const packingEntry = (packing: Lot['packings'][number]): Entry => ({
  ...derived,
  id: packing.packingId,
  kind: 'packing',
  ...signed(packing.made),
  rowId: packing.rowId,
  flags: packing.flags,
  what: `Packed ${packing.code}`,
  value: `${packing.count} × ${sayWeight(packing.net)}`,
  notes: words(`Use by ${dateWords(packing.useBy)}`),
});

const shipmentEntry = (shipment: Lot['shipments'][number]): Entry => ({
  ...derived,
  id: `${shipment.shipmentId} ${shipment.packingCode}`,
  kind: 'shipment',
  at: Date.parse(shipment.at),
  enteredAt: Date.parse(shipment.recordedAt),
  what: `Shipped to ${shipment.customer}`,
  value: `${shipment.count} packages`,
  notes: words(`Shipment ${shipment.number} of ${shipment.packingCode}`),
});

const reviewEntry = (review: NonNullable<Lot['review']>): Entry => ({
  ...derived,
  id: review.reviewId,
  kind: 'review',
  at: Date.parse(review.at),
  who: review.by,
  what: 'Pre-shipment review signed',
  notes: words(
    review.statement,
    review.soleWorker && 'Signed by the sole worker of the shop',
    `Covered ${review.covered}`,
    review.takenBack && sayTakenBack(review.takenBack),
  ),
});

const sayTakenBack = ({ what, by, reason }: NonNullable<Lot['reviews'][number]['takenBack']>): string =>
  `No longer counts: ${reason ? `taken back by ${by}: ${reason}` : `${what}, by ${by}`}`;
