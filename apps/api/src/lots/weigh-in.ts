import { Injectable } from '@nestjs/common';
import type { ControlPoint, InputOf, Judged, ReplyOf, weighIn } from '@larderbook/contracts';
import { gramsText, massOf } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import { femtograms, keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { formulaById } from '../plan/formula-in-use';
import { itemsNow, type ItemNow } from '../plan/items-now';
import { entryToAmend } from './entry-to-amend';
import { instrumentFlags } from './instrument-flags';
import { judgeWeighings, pointsJudging } from './judge-weighings';
import { entryFlags, lotToRecordOn } from './lot-to-record-on';
import { causeOnLot, openForMisses } from './open-for-misses';
import { targetsOf } from './show-targets';
import { checkEnough, usableReceipt } from './take-from';
import { wentInto, withWeighing, type WentIn } from './what-went-in';

type Input = InputOf<typeof weighIn>;
type Corrected = Awaited<ReturnType<Tx['weighing']['findFirst']>> | undefined;

/** An ingredient is weighed into a lot; a restricted substance is judged with all of it that is in, on the meat block. */
@Injectable()
export class WeighIn {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof weighIn>> {
    const { weighingId, lotId, itemId, receiptId, instrumentId, weight } = input;
    const takenAt = new Date(input.takenAt);
    return this.once.run(by, { id: weighingId, kind: 'weighing', subject: lotId, request: input }, async (tx, at) => {
      const lot = await lotToRecordOn(tx, lotId);
      const corrected = await entryToAmend(input, (where) => tx.weighing.findFirst({ where }));
      const item = await ingredient(tx, itemId);
      const fractionPercent = await fractionOf(tx, input, item, corrected);

      const before = await wentInto(tx, lotId);
      const own = { id: weighingId, lotId, itemId, name: item.name, mass: massOf(weight), substance: item.substance, percent: fractionPercent };
      const judgedAt = judgeAt(pointsJudging(lot.controlPoints, item.substance), item, withWeighing(before, own, corrected?.id));
      const judged = judgedAt.flatMap((one) => one.judged);
      const controlPointId = judgedAt[0]?.point.controlPointId;

      const lastTakenAt = corrected ? undefined : await lastWeighing(tx, lotId);
      const flags = entryFlags({ lot, takenAt, recordedAt: at, lastTakenAt });
      if (judged.length > 0 || instrumentId) flags.push(...(await instrumentFlags(tx, instrumentId, takenAt)));
      await tx.weighing.create({
        data: {
          establishmentId: by.establishmentId, id: weighingId, lotId, itemId, receiptId, ...keepWeight(weight), fractionPercent,
          targetGrams: await targetOf(tx, lot.formulaId, itemId, before), controlPointId, judged, instrumentId,
          amendsId: input.amends, reason: input.reason ?? '', flags, station: by.station, takenAt, recordedAt: at, recordedBy: by.personId,
        },
      });
      const deviationId = await openAt(tx, judgedAt, { lotId, subjectId: weighingId, takenAt }, by, at);
      return { weighingId, controlPointId, verdicts: judged.map(({ limitId, verdict }) => ({ limitId, verdict })), flags, deviationId };
    });
  }
}

async function ingredient(tx: Tx, itemId: string): Promise<ItemNow> {
  const item = (await itemsNow(tx, [itemId])).get(itemId);
  if (!item) throw new Problem('not-found', { detail: 'There is no such item in this shop.' });
  if (item.kind === 'ingredient') return item;
  const instead = item.kind === 'meat' ? 'Put it in as meat.' : 'It is no part of the product.';
  throw new Problem('wrong-item', { detail: `${item.name} is ${item.kind}, not an ingredient. ${instead}` });
}

/** Percent of the substance: as the label of the delivery says, otherwise as the item does. Checks that the delivery holds enough of it. */
async function fractionOf(tx: Tx, { receiptId, weight }: Input, item: ItemNow, corrected: Corrected): Promise<number | undefined> {
  if (!receiptId) return item.fractionPercent;
  const { row, leftFemto } = await usableReceipt(tx, receiptId);
  if (row.itemId !== item.itemId) throw new Problem('wrong-item', { detail: `${row.code} is ${row.item.name}, not ${item.name}.` });
  checkEnough(weight, leftFemto + (corrected?.receiptId === receiptId ? femtograms(corrected.grams) : 0n), row.code);
  return row.fractionPercent;
}

type JudgedAt = { point: ControlPoint; judged: Judged[] };

const judgeAt = (points: ControlPoint[], { substance }: ItemNow, wentIn: WentIn): JudgedAt[] =>
  points.map((point) => ({
    point,
    judged: judgeWeighings(point, wentIn).filter(({ limit }) => limit.kind === 'concentration' && limit.substance === substance),
  }));

type Row = { lotId: string; subjectId: string; takenAt: Date };

async function openAt(tx: Tx, judgedAt: JudgedAt[], row: Row, by: Person, at: Date): Promise<string | undefined> {
  let first: string | undefined;
  for (const { point, judged } of judgedAt) {
    const opened = await openForMisses(tx, { ...row, point, judged, causeOf: causeOnLot(row.lotId, point.controlPointId) }, by, at);
    first ??= opened;
  }
  return first;
}

async function targetOf(tx: Tx, formulaId: string, itemId: string, wentIn: WentIn): Promise<string | undefined> {
  const formula = await formulaById(tx, formulaId);
  const line = formula?.lines.find((one) => one.itemId === itemId && one.part === 'ingredient');
  const target = formula && line && targetsOf(formula, wentIn).get(line);
  return target === undefined ? undefined : gramsText(target);
}

const lastWeighing = async (tx: Tx, lotId: string) => (await tx.weighing.aggregate({ where: { lotId }, _max: { takenAt: true } }))._max.takenAt;
