import { Injectable } from '@nestjs/common';
import type { InputOf, putIn, ReplyOf } from '@larderbook/contracts';
import { massOf } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import { femtograms, gramsOf, keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { entryToAmend } from './entry-to-amend';
import { judgeWhatWentIn } from './judge-what-went-in';
import { entryFlags, lotToRecordOn } from './lot-to-record-on';
import { checkEnough, usableLot, usableReceipt } from './take-from';

type Input = InputOf<typeof putIn>;

/** Meat of a delivery, or rework of an earlier lot, goes into a lot; what was restricted by the meat block is judged again. */
@Injectable()
export class PutIn {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof putIn>> {
    const { inputId, lotId, weight, trimmed = weight } = input;
    const takenAt = new Date(input.takenAt);
    return this.once.run(by, { id: inputId, kind: 'input', subject: lotId, request: input }, async (tx, at) => {
      const lot = await lotToRecordOn(tx, lotId);
      const corrected = await entryToAmend(input, (where) => tx.lotInput.findFirst({ where }));
      checkTrimmed(input);
      await checkSource(tx, input, lot, corrected);
      const flags = entryFlags({ lot, takenAt, recordedAt: at, lastTakenAt: corrected ? undefined : await lastInput(tx, lotId) });
      await tx.lotInput.create({
        data: {
          establishmentId: by.establishmentId, id: inputId, lotId, receiptId: input.receiptId, sourceLotId: input.sourceLotId,
          ...keepWeight(weight), ...keepTrimmed(trimmed), amendsId: input.amends, reason: input.reason ?? '', flags,
          station: by.station, takenAt, recordedAt: at, recordedBy: by.personId,
        },
      });
      const { wentIn, deviationId } = await judgeWhatWentIn(tx, { lotId, points: lot.controlPoints, subjectId: inputId, takenAt }, by, at);
      return { inputId, meatBlockGrams: gramsOf(wentIn.composition.meat), flags, deviationId };
    });
  }
}

type Corrected = Awaited<ReturnType<Tx['lotInput']['findFirst']>> | undefined;

/** What the corrected entry had taken is there again. */
async function checkSource(tx: Tx, { receiptId, sourceLotId, weight }: Input, lot: { id: string; code: string }, corrected: Corrected): Promise<void> {
  if (receiptId) {
    const { row, leftFemto } = await usableReceipt(tx, receiptId);
    if (row.item.kind !== 'meat') throw new Problem('wrong-item', { detail: `${row.code} is ${row.item.name}, which is no meat. Weigh it in as an ingredient.` });
    return checkEnough(weight, leftFemto + (corrected?.receiptId === receiptId ? femtograms(corrected.grams) : 0n), row.code);
  }
  if (sourceLotId) {
    const { code, left } = await usableLot(tx, sourceLotId, lot);
    checkEnough(weight, left + (corrected?.sourceLotId === sourceLotId ? femtograms(corrected.grams) : 0n), code);
  }
}

function checkTrimmed({ weight, trimmed }: Input): void {
  if (!trimmed || massOf(trimmed) <= massOf(weight)) return;
  const figures = { taken: `${weight.value} ${weight.unit}`, trimmed: `${trimmed.value} ${trimmed.unit}` };
  throw new Problem('trimmed-exceeds-taken', { detail: `${figures.taken} were taken, and ${figures.trimmed} are said to be left after trimming.`, figures });
}

function keepTrimmed(trimmed: Input['weight']) {
  const { weightValue, weightUnit, grams } = keepWeight(trimmed);
  return { trimmedValue: weightValue, trimmedUnit: weightUnit, trimmedGrams: grams };
}

const lastInput = async (tx: Tx, lotId: string) => (await tx.lotInput.aggregate({ where: { lotId }, _max: { takenAt: true } }))._max.takenAt;
