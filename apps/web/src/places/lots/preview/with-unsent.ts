import { clarifyReadings, recordReading, weighIn, endStage, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import type { Entry } from '../../../outbox/entry';
import { withSaid } from './with-said';

/**
 * For previews only: without a signal, the third reading is judged with the first two. The day sheet shows unsent
 * entries apart; the server's verdict counts.
 */
export function withUnsent(lot: Lot, entries: Entry[]): Lot {
  return entries.filter(({ state, body }) => state !== 'parked' && body?.lotId === lot.lotId).reduce(add, lot);
}

function add(lot: Lot, { id, path, body, takenAt }: Entry): Lot {
  const made = { personId: '', name: '', at: takenAt, recordedAt: '', station: '' };
  if (path.startsWith('/readings/')) {
    const { data } = recordReading.body.safeParse(body);
    if (!data) return lot;
    const { controlPointId, entered, probe = '', amends, reason = '' } = data;
    const reading = { readingId: id, controlPointId, entered, probe, judged: [], flags: [], made, amends, reason };
    return atPoint(lot, controlPointId, (point) => ({
      ...point,
      readings: [...point.readings.map((before) => replaced(before, before.readingId, amends, id)), reading],
    }));
  }
  if (path.startsWith('/clarifications/')) {
    const { data } = clarifyReadings.body.safeParse(body);
    if (!data) return lot;
    const said = { clarificationId: id, word: data.word, reason: data.reason ?? '', made };
    return atPoint(lot, data.controlPointId, (point) => withSaid(point, data.readingIds, said));
  }
  if (path.startsWith('/stage-ends/')) {
    const { data } = endStage.body.safeParse(body);
    return data ? atPoint(lot, data.controlPointId, (point) => ({ ...point, endedAt: data.takenAt })) : lot;
  }
  if (path.startsWith('/weighings/')) {
    const { data } = weighIn.body.safeParse(body);
    const target = lot.targets.find(({ itemId }) => itemId === data?.itemId);
    if (!data || !target) return lot;
    const item = { itemId: data.itemId, name: target.itemName };
    const weighing = {
      weighingId: id,
      item,
      weight: { ...data.weight, grams: 0 },
      judged: [],
      flags: [],
      made,
      amends: data.amends,
      reason: data.reason ?? '',
    };
    return {
      ...lot,
      weighings: [...lot.weighings.map((before) => replaced(before, before.weighingId, data.amends, id)), weighing],
    };
  }
  return lot;
}

const atPoint = (lot: Lot, controlPointId: string, change: (point: ControlPointOnLot) => ControlPointOnLot): Lot => ({
  ...lot,
  controlPoints: lot.controlPoints.map((point) => (point.controlPoint.controlPointId === controlPointId ? change(point) : point)),
});

const replaced = <Row>(row: Row, id: string, amends: string | undefined, by: string): Row =>
  id === amends ? { ...row, amendedBy: by } : row;
