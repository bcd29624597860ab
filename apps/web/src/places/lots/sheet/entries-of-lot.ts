import { isOfSurroundings, ofProduct, removalKinds, wordOf, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { codeOf, sayAnswered } from '@larderbook/messages';
import { enteredValue, enteredWeight, probeName } from '../say/entered';
import type { Entry } from './fold-amendments';
import type { SheetVoice } from './sheet-voice';

export const entriesOf = (lot: Lot, voice: SheetVoice): Entry[] => [
  startOf(lot, voice),
  ...lot.inputs.map((input) => inputEntry(input, voice)),
  ...lot.weighings.map((weighing) => weighingEntry(weighing, voice)),
  ...lot.controlPoints.flatMap((point) => pointEntries(point, voice)),
  ...lot.removals.map((removal) => removalEntry(removal, voice)),
  ...lot.packings.map((packing) => packingEntry(packing, voice)),
  ...lot.shipments.map((shipment) => shipmentEntry(shipment, voice)),
  ...lot.reviews.map((review) => reviewEntry(review, voice)),
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

const startOf = (lot: Lot, { say }: SheetVoice): Entry => ({
  ...derived,
  id: lot.lotId,
  kind: 'start',
  ...signed(lot.made),
  flags: lot.flags,
  what: say('lot-started'),
  notes: words(say('formula-and-plan', { formula: String(lot.formula.version), plan: String(lot.plan.version) }), lot.note),
});

const inputEntry = (input: Lot['inputs'][number], { say, figures }: SheetVoice): Entry => ({
  ...recorded(input),
  id: input.inputId,
  kind: 'input',
  what: input.from.lotId ? say('rework', { what: input.from.what }) : input.from.what,
  value: figures.quantity(input.trimmed),
  judged: [],
  notes: words(
    input.trimmed.grams !== input.weight.grams &&
      say('taken-trimmed', { taken: enteredWeight(input.weight), trimmed: enteredWeight(input.trimmed) }),
    say(input.from.lotId ? 'rework-of' : 'delivery', { code: input.from.code }),
    input.from.supplier && supplierOf(input.from.supplier, input.from.supplierLot, say),
  ),
});

const supplierOf = (supplier: string, lot: string | undefined, say: SheetVoice['say']): string =>
  lot ? say('supplier-lot', { supplier, lot }) : supplier;

const weighingEntry = (weighing: Lot['weighings'][number], { say, figures }: SheetVoice): Entry => ({
  ...recorded(weighing),
  id: weighing.weighingId,
  kind: 'weighing',
  what: weighing.item.name,
  value: figures.quantity(weighing.weight),
  judged: weighing.judged,
  controlPointId: weighing.controlPointId,
  notes: words(
    weighing.fractionBefore !== undefined &&
      say('now-known', { now: percent(weighing.fractionPercent), before: percent(weighing.fractionBefore) }),
    weighing.receipt && say('delivery-lot', { code: weighing.receipt.code, lot: weighing.receipt.supplierLot }),
  ),
});

const percent = (value = 0) => ({ value: String(value), unit: '%' }) as const;

function pointEntries(point: ControlPointOnLot, voice: SheetVoice): Entry[] {
  const { say, sayEntry } = voice;
  const { controlPointId, name } = point.controlPoint;
  const readings = point.readings.map(
    (reading): Entry => ({
      ...recorded(reading),
      id: reading.readingId,
      kind: 'reading',
      what: name,
      value: shortly(reading.entered, voice),
      judged: reading.judged,
      controlPointId,
      probe: reading.probe,
      deviationId: reading.deviationId,
      isLeftOut: wordOf(reading) === 'not of the core',
      said: reading.clarifications?.map(({ word, reason, made }) =>
        say('says-word', { word: sayEntry(codeOf('word', word)), who: made.name, reason }),
      ),
      notes: words(
        'answer' in reading.entered && sayAnswered(reading.entered, sayEntry),
        reading.probe && probeName(reading.probe, sayEntry),
        isOfSurroundings(point.controlPoint, reading) && say('judged-by-none'),
        reading.instrument?.name,
      ),
    }),
  );
  if (point.endedAt === undefined) return [...readings, ...soFar(point, voice)];
  const end: Entry = {
    ...derived,
    id: `${controlPointId} end`,
    kind: 'stage end',
    ...(point.stageEnd ? signed(point.stageEnd.made) : { at: Date.parse(point.endedAt) }),
    rowId: point.stageEnd?.rowId,
    what: say('finished', { point: name }),
    judged: point.judged,
    controlPointId,
  };
  return [...readings, end];
}

const shortly = (entered: ControlPointOnLot['readings'][number]['entered'], { sayEntry, figures }: SheetVoice) =>
  enteredValue('answer' in entered ? { answer: entered.answer, seen: '' } : entered, sayEntry, figures);

/** A curve is judged as a whole: while it runs, what is decided stands under its last reading. */
function soFar({ controlPoint, readings, judged }: ControlPointOnLot, { say }: SheetVoice): Entry[] {
  const { controlPointId, name, takenAs } = controlPoint;
  const last = ofProduct(controlPoint, readings).findLast(({ amendedBy }) => amendedBy === undefined);
  const decided = judged.filter(({ verdict }) => verdict.kind !== 'undetermined');
  if (takenAs !== 'curve' || !last || decided.length === 0) return [];
  const at = Date.parse(last.made.at);
  return [
    {
      ...derived,
      id: `${controlPointId} so far`,
      kind: 'so far',
      at,
      what: say('so-far', { point: name }),
      judged: decided,
      controlPointId,
    },
  ];
}

const removalEntry = (removal: Lot['removals'][number], { say, sayEntry, figures }: SheetVoice): Entry => ({
  ...derived,
  id: removal.removalId,
  kind: 'removal',
  ...signed(removal.made),
  rowId: removal.rowId,
  what: say('taken-out', { kind: removalName(removal.kind, sayEntry) }),
  value: figures.quantity(removal.weight),
  notes: words(removal.note),
});

/** A kind that this version does not know stands as it was recorded. */
function removalName(kind: string, sayEntry: SheetVoice['sayEntry']): string {
  const known = removalKinds.find((each) => each === kind);
  return known ? sayEntry(codeOf('removed', known)) : kind;
}

const packingEntry = (packing: Lot['packings'][number], { say }: SheetVoice): Entry => ({
  ...derived,
  id: packing.packingId,
  kind: 'packing',
  ...signed(packing.made),
  rowId: packing.rowId,
  flags: packing.flags,
  what: say('packed', { code: packing.code }),
  value: say('count-weight', { count: String(packing.count), weight: enteredWeight(packing.net) }),
  notes: words(say('use-by', { day: { day: packing.useBy } })),
});

const shipmentEntry = (shipment: Lot['shipments'][number], { say }: SheetVoice): Entry => ({
  ...derived,
  id: `${shipment.shipmentId} ${shipment.packingCode}`,
  kind: 'shipment',
  at: Date.parse(shipment.at),
  enteredAt: Date.parse(shipment.recordedAt),
  what: say('shipped-to', { customer: shipment.customer }),
  value: say('packages', { count: shipment.count }),
  notes: words(say('shipment-of', { number: String(shipment.number), code: shipment.packingCode })),
});

const reviewEntry = (review: NonNullable<Lot['review']>, { say, tell }: SheetVoice): Entry => ({
  ...derived,
  id: review.reviewId,
  kind: 'review',
  at: Date.parse(review.at),
  who: review.by,
  what: say('review-signed'),
  notes: words(
    review.statement,
    review.soleWorker && say('sole-worker'),
    say('covered', review.covered),
    review.takenBack && takenBack(review.takenBack, say, tell),
  ),
});

type TakenBack = NonNullable<Lot['reviews'][number]['takenBack']>;

const takenBack = ({ what, by: who, reason }: TakenBack, say: SheetVoice['say'], tell: SheetVoice['tell']): string =>
  reason ? say('taken-back', { who, reason }) : say('counts-no-more', { what: tell([what]), who });
