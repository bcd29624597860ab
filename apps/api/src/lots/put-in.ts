import { Injectable } from '@nestjs/common';
import type { InputOf, putIn, ReplyOf } from '@larderbook/contracts';
import { asGiven, massOf } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import { femtograms, gramsOf, keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { formulaById } from '../products/formula-in-use';
import { askAboutTrimmed, flagUnlessSure } from './ask-about-weight';
import { entryToAmend } from './entry-to-amend';
import { flagNotInFormula } from './flag-not-in-formula';
import { holdStays } from './hold-stays';
import { judgeWhatWentIn } from './judge-what-went-in';
import { entryFlags, lotToRecordOn } from './lot-to-record-on';
import { checkEnough, checkStillThere, usableLot, usableReceipt } from './take-from';

type Input = InputOf<typeof putIn>;
type Lot = Awaited<ReturnType<typeof lotToRecordOn>>;
type Corrected = Awaited<ReturnType<Tx['lotInput']['findFirst']>> | undefined;

@Injectable()
export class PutIn {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof putIn>> {
    const { inputId, lotId, receiptId, sourceLotId, weight, trimmed = weight, amends, reason = '' } = input;
    const takenAt = new Date(input.takenAt);
    return this.once.run(by, { id: inputId, kind: 'input', subject: lotId, request: input }, async (tx, at) => {
      const lot = await lotToRecordOn(tx, lotId);
      const corrected = await entryToAmend(input, (where) => tx.lotInput.findFirst({ where }));
      checkTrimmed(input);
      const itemId = await checkSource(tx, input, lot, corrected);
      if (corrected) await checkStillThere(tx, lotId, femtograms(corrected.trimmedGrams) - massOf(trimmed), trimmed.unit, 'a hundredth');
      const odd = await flagsOf(tx, lot, { takenAt, at, isCorrection: corrected !== undefined });
      const formula = await formulaById(tx, lot.formulaId);
      const unusual = flagUnlessSure(askAboutTrimmed(weight, trimmed), input.sure);
      const flags = [...odd, ...unusual, ...(itemId ? flagNotInFormula(formula, { part: 'meat', itemId }) : [])];

      const entry = { id: inputId, lotId, receiptId, sourceLotId, takenAt, amendsId: amends, reason, flags };
      const weights = { ...keepWeight(weight), ...keepTrimmed(trimmed) };
      const data = { ...keptBy(by, at), ...entry, ...weights, station: by.station };
      await (corrected ? holdStays(tx, lotId, () => tx.lotInput.create({ data })) : tx.lotInput.create({ data }));

      const change = { lotId, subjectId: inputId, takenAt };
      const { wentIn, deviationId } = await judgeWhatWentIn(tx, change, lot.controlPoints, by, at);
      return { inputId, meatBlockGrams: gramsOf(wentIn.composition.meat), flags, deviationId };
    });
  }
}

/** Rework has no item. What the corrected entry had taken is available again. */
async function checkSource(tx: Tx, input: Input, lot: Lot, corrected: Corrected): Promise<string | undefined> {
  const { receiptId, sourceLotId, weight } = input;
  const isSame = corrected?.receiptId === (receiptId ?? null) && corrected.sourceLotId === (sourceLotId ?? null);
  const givenBack = isSame ? femtograms(corrected.grams) : 0n;
  if (receiptId) {
    const { row, leftFemto } = await usableReceipt(tx, receiptId);
    if (row.item.kind !== 'meat') throw notMeat(row.code, row.item.name);
    checkEnough(weight, leftFemto + givenBack, row.code);
    return row.itemId;
  }
  if (sourceLotId) {
    const { code, left } = await usableLot(tx, sourceLotId, lot);
    checkEnough(weight, left + givenBack, code);
  }
  return undefined;
}

const notMeat = (code: string, name: string) => new Problem('wrong-item', told('is-no-meat', { code, name }));

function checkTrimmed({ weight, trimmed }: Input): void {
  if (!trimmed || massOf(trimmed) <= massOf(weight)) return;
  const figures = { taken: asGiven(weight.value, weight.unit), trimmed: asGiven(trimmed.value, trimmed.unit) };
  throw new Problem('trimmed-exceeds-taken', told('more-left-than-taken', figures));
}

function keepTrimmed(trimmed: Input['weight']) {
  const { weightValue, weightUnit, grams } = keepWeight(trimmed);
  return { trimmedValue: weightValue, trimmedUnit: weightUnit, trimmedGrams: grams };
}

type Circumstances = { takenAt: Date; at: Date; isCorrection: boolean };

async function flagsOf(tx: Tx, lot: Lot, { takenAt, at, isCorrection }: Circumstances) {
  const { _max } = await tx.lotInput.aggregate({ where: { lotId: lot.id }, _max: { takenAt: true } });
  return entryFlags({ lot, takenAt, recordedAt: at, lastTakenAt: isCorrection ? undefined : _max.takenAt });
}
