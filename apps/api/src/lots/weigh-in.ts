import { Injectable } from '@nestjs/common';
import type { Flag, InputOf, Judged, ReplyOf, weighIn } from '@larderbook/contracts';
import { gramsText, massFromGrams, massOf } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import { femtograms, keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { formulaById, type FormulaInUse } from '../products/formula-in-use';
import { itemsNow, type ItemNow } from '../products/items-now';
import { pointsJudging } from '../products/points-judging';
import { askBesideTarget, flagUnlessSure, type Question } from './ask-about-weight';
import { entryToAmend } from './entry-to-amend';
import { flagNotInFormula } from './flag-not-in-formula';
import { holdStays } from './hold-stays';
import { checkFlags, lastChecksOf } from './instrument-flags';
import { judgeDependents } from './judge-dependents';
import { keptJudged } from './kept-judged';
import { judgeWeighings } from './judge-weighings';
import { entryFlags, lotToRecordOn } from './lot-to-record-on';
import { openForMisses, type JudgedAt } from './open-for-misses';
import { targetsOf, toWeighOf } from './show-targets';
import { openForUnjudged } from './open-for-unjudged';
import { checkEnough, checkStillThere, usableReceipt } from './take-from';
import { unjudgedSubstances } from './unjudged-substances';
import { wentInto, withWeighing, type WentIn } from './what-went-in';

type Input = InputOf<typeof weighIn>;
type Lot = Awaited<ReturnType<typeof lotToRecordOn>>;
type Corrected = Awaited<ReturnType<Tx['weighing']['findFirst']>> | undefined;

@Injectable()
export class WeighIn {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof weighIn>> {
    const { weighingId, lotId, itemId, weight } = input;
    const takenAt = new Date(input.takenAt);
    return this.once.run(by, { id: weighingId, kind: 'weighing', subject: lotId, request: input }, async (tx, at) => {
      const lot = await lotToRecordOn(tx, lotId);
      const corrected = await entryToAmend(input, (where) => tx.weighing.findFirst({ where }));
      const item = await ingredient(tx, itemId);
      const percent = await contentOf(tx, input, item, corrected);

      if (corrected) await checkStillThere(tx, lotId, femtograms(corrected.grams) - massOf(weight), weight.unit, 'a hundredth');

      const { name, substance, saltPercent, waterPercent } = item;
      const before = await wentInto(tx, lotId);
      const holds = { substance, percent, saltPercent, waterPercent };
      const weighed = { id: weighingId, lotId, itemId, name, mass: massOf(weight), ...holds };
      const wentIn = withWeighing(before, weighed, corrected?.id);
      const judgedAt = judgeAll(lot, item, wentIn);
      const judged = [...judgedAt.flatMap((one) => one.judged), ...inDoubt(lot, item, wentIn)];
      const controlPointId = judgedAt[0]?.point.controlPointId;

      const formula = await formulaById(tx, lot.formulaId);
      const targetGrams = targetOf(formula, itemId, before, lot);
      const unusual = flagUnlessSure(askAtScale(weight, targetGrams, alreadyIn(wentIn, input)), input.sure);
      const odd = await flagsOf(tx, input, { lot, at, isJudged: judged.length > 0 });
      const flags = [...odd, ...unusual, ...flagNotInFormula(formula, { part: 'ingredient', itemId })];
      const write = () => insert(tx, input, { percent, targetGrams, controlPointId, judged, flags }, by, at);
      await (corrected ? holdStays(tx, lotId, write) : write());
      const entry = { lotId, subjectId: weighingId, takenAt };
      const dependents = await judgeDependents(tx, lotId, lot.controlPoints);
      const missed = await openForMisses(tx, entry, [...judgedAt, ...dependents], by, at);
      const unjudged = await openForUnjudged(tx, entry, lot.controlPoints, wentIn, by, at);
      const verdicts = judged.map(({ limitId, verdict }) => ({ limitId, verdict }));
      return { weighingId, controlPointId, verdicts, flags, deviationId: missed ?? unjudged };
    });
  }
}

async function ingredient(tx: Tx, itemId: string): Promise<ItemNow> {
  const item = (await itemsNow(tx, [itemId])).get(itemId);
  if (!item) throw new Problem('not-found', told('no-such-item'));
  if (item.kind === 'ingredient') return item;
  throw new Problem('wrong-item', told(item.kind === 'meat' ? 'put-in-as-meat' : 'is-packaging', { name: item.name }));
}

/**
 * The label of the delivery counts before the item. Throws `wrong-item` and `more-than-there-is`. What a corrected
 * entry had taken is available again.
 */
async function contentOf(tx: Tx, { receiptId, weight }: Input, item: ItemNow, corrected: Corrected) {
  if (!receiptId) return item.fractionPercent;
  const { row, leftFemto } = await usableReceipt(tx, receiptId);
  if (row.itemId !== item.itemId) {
    throw new Problem('wrong-item', told('of-another-item', { code: row.code, is: row.item.name, item: item.name }));
  }
  const givenBack = corrected?.receiptId === receiptId ? femtograms(corrected.grams) : 0n;
  checkEnough(weight, leftFemto + givenBack, row.code);
  return row.fractionPercent;
}

const judgeAll = ({ controlPoints }: Lot, { substance }: ItemNow, wentIn: WentIn): JudgedAt[] =>
  pointsJudging(controlPoints, substance).map((point) => ({
    point,
    judged: judgeWeighings(point, wentIn).filter(({ limit }) => 'substance' in limit && limit.substance === substance),
  }));

const inDoubt = ({ controlPoints }: Lot, { substance }: ItemNow, wentIn: WentIn): Judged[] =>
  unjudgedSubstances(controlPoints, wentIn).flatMap((one) => (one.substance === substance ? [one.judged] : []));

type Circumstances = { lot: Lot; at: Date; isJudged: boolean };

/** The scale matters only where a limit is judged by it. */
async function flagsOf(tx: Tx, input: Input, { lot, at, isJudged }: Circumstances): Promise<Flag[]> {
  const { lotId, instrumentId, amends } = input;
  const takenAt = new Date(input.takenAt);
  const { _max } = await tx.weighing.aggregate({ where: { lotId }, _max: { takenAt: true } });
  const odd = entryFlags({ lot, takenAt, recordedAt: at, lastTakenAt: amends ? undefined : _max.takenAt });
  if (!isJudged && !instrumentId) return odd;
  return [...odd, ...checkFlags(instrumentId, await lastChecksOf(tx, instrumentId, takenAt), takenAt)];
}

const alreadyIn = ({ weighings: all }: WentIn, { itemId, weighingId }: Input): bigint =>
  all.reduce((sum, one) => (one.itemId === itemId && one.id !== weighingId ? sum + one.mass : sum), 0n);

function askAtScale(weight: Input['weight'], targetGrams: string | undefined, isIn: bigint): Question | undefined {
  if (targetGrams === undefined) return undefined;
  const target = massFromGrams(targetGrams);
  return askBesideTarget(weight, target, target - isIn);
}

function targetOf(formula: FormulaInUse | undefined, itemId: string, wentIn: WentIn, { controlPoints }: Lot): string | undefined {
  const line = formula?.lines.find((one) => one.itemId === itemId && one.part === 'ingredient');
  const target = formula && line && toWeighOf(line, targetsOf(formula, wentIn).get(line), { controlPoints }, wentIn);
  return target === undefined ? undefined : gramsText(target);
}

type Found = { percent?: number; targetGrams?: string; controlPointId?: string; judged: Judged[]; flags: Flag[] };

async function insert(tx: Tx, input: Input, { percent, ...found }: Found, by: Person, at: Date): Promise<void> {
  const { weighingId, lotId, itemId, receiptId, instrumentId, weight, takenAt, amends, reason = '' } = input;
  const entry = { lotId, itemId, receiptId, instrumentId, takenAt: new Date(takenAt), amendsId: amends, reason };
  await tx.weighing.create({
    data: {
      ...keptBy(by, at),
      ...entry,
      ...keepWeight(weight),
      ...found,
      judged: keptJudged(found.judged),
      id: weighingId,
      fractionPercent: percent,
      station: by.station,
    },
  });
}
