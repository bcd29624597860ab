import {
  countDecisions,
  decidedOf,
  massFromGrams,
  type Decided,
  type DecisionMade,
  type HeldProduct,
  type MassUnit,
} from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { massUnit } from '../platform/kept-weight';
import { readHeld, type EntryRow, type HeldRows, type ProductRow } from './held-rows.queries';

/** Femtograms. */
export type HeldNow = Decided & {
  id: string;
  kind: 'lot' | 'receipt';
  code: string;
  what: string;
  /** Neither taken into a lot nor shipped, condemned or sent back. */
  here: bigint;
  /** Shipped, and not called back. */
  left: bigint;
};
/** The first product is the one the deviation was opened on. */
export type Concerned = Decided & { unit: MassUnit; products: [HeldNow, ...HeldNow[]] };

/** By the records as corrected now, without what was put in after a closing. `without` leaves out one decision. */
export async function productsHeld(tx: Tx, deviationIds: readonly string[], without?: string): Promise<ReadonlyMap<string, Concerned>> {
  if (deviationIds.length === 0) return new Map();
  const rows = await readHeld(tx, deviationIds, without);
  return new Map(rows.deviations.map((deviation) => [deviation.id, concernedBy(rows, deviation)]));
}

function concernedBy(rows: HeldRows, { id, productId, closedSeq, reached }: HeldRows['deviations'][number]): Concerned {
  const counts = (entry: EntryRow) => !entry.isCorrected && (closedSeq === null || rows.rootSeq(entry) < closedSeq);
  const entries = rows.entries.filter(counts);
  const known = [productId, ...reached.filter((each) => each !== productId)];
  const held = new Map(known.map((each) => [each, heldProduct(rows, each, id, entries)]));
  const decided = decidedOf(held);
  const show = (each: string): HeldNow => ({ ...describe(rows, each), ...decided(each), ...whereIs(rows, each) });
  const [first = productId, ...others] = known;
  return { ...decided(productId), unit: unitOf(rows, productId), products: [show(first), ...others.map(show)] };
}

function heldProduct(rows: HeldRows, id: string, deviationId: string, entries: readonly EntryRow[]): HeldProduct {
  const made = rows.dispositions.flatMap(({ productId, grams, decision, speaksFor }) =>
    productId === id ? [{ mass: massFromGrams(grams), becomes: becomes(decision), speaksForIt: speaksFor.includes(deviationId) }] : [],
  );
  const taken = entries.filter(({ sourceId }) => sourceId === id);
  return {
    there: wentIn(rows, id, entries) - sum(rows.removals.filter(({ productId }) => productId === id)),
    ...countDecisions(made),
    taken: taken.map(({ lotId, grams }) => ({ into: lotId, mass: massFromGrams(grams) })),
  };
}

/** A refused delivery went back whole. */
function wentIn(rows: HeldRows, id: string, entries: readonly EntryRow[]): bigint {
  const own = entries.filter(({ lotId }) => lotId === id).map(({ counted }) => ({ grams: counted }));
  return sum(own) + massFromGrams(rows.products.get(id)?.received ?? '0');
}

function whereIs(rows: HeldRows, id: string): { here: bigint; left: bigint } {
  const entries = rows.entries.filter(({ isCorrected }) => !isCorrected);
  const of = <Row extends { productId: string }>(some: readonly Row[]) => some.filter(({ productId }) => productId === id);
  const shipped = massFromGrams(rows.products.get(id)?.shipped ?? '0');
  const taken = sum(entries.filter(({ sourceId }) => sourceId === id));
  const gone = sum(of(rows.dispositions).filter(isGone)) + sum(of(rows.removals));
  const recalled = sum(of(rows.dispositions).filter(({ decision }) => decision === 'recall'));
  return {
    here: atLeastZero(wentIn(rows, id, entries) - taken - shipped - gone),
    left: atLeastZero(shipped - recalled),
  };
}

const describe = ({ products }: HeldRows, id: string): Pick<ProductRow, 'id' | 'kind' | 'code' | 'what'> => {
  const { kind = 'lot', code = '', what = '' } = products.get(id) ?? {};
  return { id, kind, code, what };
};

/** Pounds where pounds were entered, kilograms elsewhere. */
function unitOf(rows: HeldRows, id: string): MassUnit {
  const entered = rows.products.get(id)?.unit ?? rows.entries.find(({ lotId }) => lotId === id)?.unit ?? 'kg';
  const unit = massUnit(entered);
  return unit === 'lb' || unit === 'oz' ? 'lb' : 'kg';
}

function becomes(decision: string): DecisionMade['becomes'] {
  if (decision === 'recall') return 'recalled';
  return isGone({ decision }) ? 'leaves' : 'stays';
}

const isGone = ({ decision }: { decision: string }): boolean => decision === 'condemn' || decision === 'return';
const sum = (rows: readonly { grams: string }[]): bigint => rows.reduce((total, { grams }) => total + massFromGrams(grams), 0n);
const atLeastZero = (mass: bigint): bigint => (mass > 0n ? mass : 0n);
