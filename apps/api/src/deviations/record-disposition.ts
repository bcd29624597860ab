import { Injectable } from '@nestjs/common';
import type { InputOf, recordDisposition } from '@larderbook/contracts';
import { asGiven, gramsText, roundedMass, massOf, formatMass } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { RecordOnce } from '../ledger/record-once';
import type { Amending } from '../ledger/row-to-correct';
import { Database, type Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { deviationsToSettle, type ToSettle } from './deviation-to-settle';
import { showDeviation } from './deviations.queries';
import type { HeldNow } from './held-products.queries';

type Input = InputOf<typeof recordDisposition>;
type DispositionSaid = Omit<Input, 'dispositionId'>;

/** One decision may speak for several deviations. */
@Injectable()
export class RecordDisposition {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: Input, by: Person) {
    const { dispositionId: id, ...disposition } = input;
    const [first = ''] = disposition.deviationIds;
    await this.once.run(by, { id, kind: 'disposition', subject: first, request: input }, async (tx, at) => {
      const deviations = await deviationsToSettle(tx, disposition.deviationIds);
      await keepDisposition(tx, { id, disposition, deviations }, by, at);
      return { dispositionId: id };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, first));
  }
}

type Kept = { id: string; disposition: DispositionSaid; deviations: readonly ToSettle[]; amending?: Amending };

/** Throws `wrong-product`, `all-decided` and `more-than-there-is`. */
export async function keepDisposition(tx: Tx, { id, disposition, deviations, amending }: Kept, by: Person, at: Date): Promise<void> {
  const { deviationIds, lotId, receiptId, decision, reason, basis, weight } = disposition;
  const kept = { weightValue: weight.value, weightUnit: weight.unit, grams: gramsText(massDecided(deviations, disposition)) };
  const about = { id, lotId, receiptId, decision, reason, basis };
  await tx.disposition.create({ data: { ...keptBy(by, at), ...about, ...kept, ...amending } });
  const { establishmentId } = by;
  await tx.decidedDeviation.createMany({
    data: deviationIds.map((deviationId) => ({ establishmentId, id: v7(), dispositionId: id, deviationId })),
  });
}

/** A weight that reads like all that is undecided is all of it. */
function massDecided(deviations: readonly ToSettle[], input: DispositionSaid): bigint {
  const products = deviations.map((deviation) => productOf(deviation, input));
  const product = products.reduce((least, each) => (each.undecided < least.undecided ? each : least));
  if (product.undecided === 0n) throw new Problem('all-decided', told('decided-already', { code: product.code }));
  const most = mostFor(input.decision, product);
  const { unit } = input.weight;
  const asked = massOf(input.weight);
  const isAllOfIt = formatMass(most, unit) === formatMass(asked, unit);
  if (isAllOfIt || asked <= most) return isAllOfIt ? most : asked;
  throw tooMuch(input, product);
}

function productOf({ number, concerned }: ToSettle, input: DispositionSaid): HeldNow {
  const id = input.lotId ?? input.receiptId;
  const product = concerned.products.find((each) => each.id === id);
  if (product) return product;
  const products = concerned.products.map(({ code }) => code);
  throw new Problem('wrong-product', told('stands-on', { number: String(number), products }));
}

/** Only product that has left can be called back; only product here can be reworked, condemned or sent back. */
function mostFor(decision: Input['decision'], { undecided, here, left }: HeldNow): bigint {
  if (decision === 'release') return undecided;
  return least(undecided, decision === 'recall' ? left : here);
}

function tooMuch({ weight, decision }: DispositionSaid, product: HeldNow): Problem {
  const { code, undecided, here, left } = product;
  const figure = (mass: bigint) => roundedMass(mass, weight.unit, 3, 'down');
  const figures = { asked: asGiven(weight.value, weight.unit), code, undecided: figure(undecided) };
  const why =
    decision === 'recall'
      ? told('more-than-has-left', { ...figures, left: figure(left) })
      : told('more-than-is-here', { ...figures, here: figure(here) });
  const most = told('at-most-weight', { most: figure(mostFor(decision, product)) });
  return new Problem('more-than-there-is', why, [{ pointer: '#/weight', ...most }]);
}

const least = (a: bigint, b: bigint): bigint => (a < b ? a : b);
