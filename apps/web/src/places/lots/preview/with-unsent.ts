import {
  clarifyReadings,
  putIn,
  recordReading,
  weighIn,
  endStage,
  voidRecord,
  type ControlPointOnLot,
  type Lot,
} from '@larderbook/contracts';
import { massOf, type EnteredMass } from '@larderbook/haccp';
import type { Entry } from '../../../outbox/entry';
import { isOfLot } from './of-lot';
import { withSaid } from './with-said';

/**
 * For previews only: without a signal, the third reading is judged with the first two. The day sheet shows unsent
 * entries apart; the server's verdict counts.
 */
export function withUnsent(lot: Lot, entries: Entry[]): Lot {
  return entries.filter(({ state }) => state !== 'parked').reduce((all, entry) => (isOfLot(all, entry) ? add(all, entry) : all), lot);
}

const add = (lot: Lot, entry: Entry): Lot => adders[entry.path.split('/')[1] ?? '']?.(lot, entry) ?? lot;

/** Undefined for an entry of an older version, which no longer reads. */
const adders: Record<string, (lot: Lot, entry: Entry) => Lot | undefined> = {
  readings(lot, { id, body, takenAt }) {
    const { data } = recordReading.body.safeParse(body);
    if (!data) return undefined;
    const { controlPointId, entered, probe = '', amends, reason = '' } = data;
    const reading = { readingId: id, controlPointId, entered, probe, judged: [], flags: [], made: madeAt(takenAt), amends, reason };
    return atPoint(without(lot, amends, id), controlPointId, (point) => ({ ...point, readings: [...point.readings, reading] }));
  },
  clarifications(lot, { id, body, takenAt }) {
    const { data } = clarifyReadings.body.safeParse(body);
    if (!data) return undefined;
    const said = { clarificationId: id, word: data.word, reason: data.reason ?? '', made: madeAt(takenAt) };
    return atPoint(lot, data.controlPointId, (point) => withSaid(point, data.readingIds, said));
  },
  'stage-ends'(lot, { body }) {
    const { data } = endStage.body.safeParse(body);
    return data && atPoint(lot, data.controlPointId, (point) => ({ ...point, endedAt: data.takenAt }));
  },
  inputs(lot, { id, body, takenAt }) {
    const { data } = putIn.body.safeParse(body);
    if (!data) return undefined;
    const { receiptId, sourceLotId, amends, reason = '' } = data;
    const weight = weighed(data.weight);
    const trimmed = data.trimmed ? weighed(data.trimmed) : weight;
    const from = { receiptId, lotId: sourceLotId, code: '', what: '' };
    const input = { inputId: id, from, weight, trimmed, flags: [], made: madeAt(takenAt), amends, reason };
    const before = without(lot, amends, id);
    return { ...withBlock(before, before.meatBlockGrams + trimmed.grams), inputs: [...before.inputs, input] };
  },
  weighings(lot, { id, body, takenAt }) {
    const { data } = weighIn.body.safeParse(body);
    const target = lot.targets.find(({ itemId }) => itemId === data?.itemId);
    if (!data || !target) return undefined;
    const item = { itemId: data.itemId, name: target.itemName };
    const { amends, reason = '' } = data;
    const weighing = { weighingId: id, item, weight: weighed(data.weight), judged: [], flags: [], made: madeAt(takenAt), amends, reason };
    const before = without(lot, amends, id);
    return { ...before, weighings: [...before.weighings, weighing] };
  },
  voids(lot, { id, body }) {
    const { data } = voidRecord.body.safeParse(body);
    return data && without(lot, data.amends, id);
  },
};

const madeAt = (at: string) => ({ personId: '', name: '', at, recordedAt: '', station: '' });
const weighed = (weight: EnteredMass) => ({ ...weight, grams: Number(massOf(weight)) / 1e15 });

/** What was amended or voided counts no more. */
function without(lot: Lot, amends: string | undefined, by: string): Lot {
  if (amends === undefined) return lot;
  const gone = lot.inputs.find(({ inputId, amendedBy }) => inputId === amends && amendedBy === undefined);
  return {
    ...(gone ? withBlock(lot, lot.meatBlockGrams - gone.trimmed.grams) : lot),
    inputs: lot.inputs.map((row) => replaced(row, row.inputId, amends, by)),
    weighings: lot.weighings.map((row) => replaced(row, row.weighingId, amends, by)),
    controlPoints: lot.controlPoints.map(({ endedAt, stageEnd, ...point }) => ({
      ...point,
      ...(stageEnd?.rowId !== amends && { endedAt, stageEnd }),
      readings: point.readings.map((row) => replaced(row, row.readingId, amends, by)),
    })),
  };
}

const replaced = <Row extends object>(row: Row, id: string, amends: string, by: string): Row =>
  id === amends ? { ...row, amendedBy: by } : row;

/** What the server reckoned for another meat block is left out, as before there was any. */
const withBlock = (lot: Lot, meatBlockGrams: number): Lot => ({
  ...lot,
  meatBlockGrams,
  targets: lot.targets.map((target) => ({
    ...target,
    targetGrams: undefined,
    minGrams: undefined,
    maxGrams: undefined,
    onScale: undefined,
  })),
});

const atPoint = (lot: Lot, controlPointId: string, change: (point: ControlPointOnLot) => ControlPointOnLot): Lot => ({
  ...lot,
  controlPoints: lot.controlPoints.map((point) => (point.controlPoint.controlPointId === controlPointId ? change(point) : point)),
});
