import type { Prisma } from '../generated/prisma/client';
import { namesNow } from '../ledger/rows-that-count';
import { checksOfInstruments, type ChecksOf } from './instrument-flags';
import { personNames, type PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';

const inOrder = [{ takenAt: 'asc' as const }, { seq: 'asc' as const }, { id: 'asc' as const }];
const made = { flags: true, station: true, takenAt: true, recordedAt: true, recordedBy: true } as const;
const amendable = { ...made, id: true, amendsId: true, voided: true, reason: true } as const;
const weight = { weightValue: true, weightUnit: true, grams: true } as const;

const columns = {
  inputs: {
    select: {
      ...amendable,
      ...weight,
      trimmedValue: true,
      trimmedUnit: true,
      trimmedGrams: true,
      receipt: { select: { id: true, code: true, itemId: true, supplierId: true, supplierLot: true } },
      sourceLot: { select: { id: true, code: true, productId: true } },
    },
    orderBy: inOrder,
  },
  weighings: {
    select: {
      ...amendable,
      ...weight,
      itemId: true,
      fractionPercent: true,
      targetGrams: true,
      controlPointId: true,
      instrumentId: true,
      judged: true,
      receipt: { select: { id: true, code: true, supplierLot: true, itemId: true, fractionPercent: true, amendsId: true } },
    },
    orderBy: inOrder,
  },
  readings: { select: { ...amendable, instrumentId: true } },
  packings: {
    select: {
      ...made,
      id: true,
      rowId: true,
      code: true,
      count: true,
      netValue: true,
      netUnit: true,
      netGrams: true,
      useBy: true,
      shipmentLines: {
        select: { count: true, shipment: { select: { id: true, number: true, takenAt: true, recordedAt: true, customerId: true } } },
      },
    },
    orderBy: [{ takenAt: 'asc' }, { code: 'asc' }],
  },
  removals: {
    select: { ...weight, id: true, rowId: true, kind: true, note: true, station: true, takenAt: true, recordedAt: true, recordedBy: true },
    orderBy: { takenAt: 'asc' },
  },
  reviews: { select: { id: true, findings: true } },
} satisfies Prisma.LotSelect;

export type Shown = Prisma.LotGetPayload<{ select: typeof columns }> & {
  people: PersonNames;
  checks: ReadonlyMap<string, ChecksOf>;
  /** Present names of items, suppliers, products, customers and instruments, by id. */
  names: ReadonlyMap<string, string>;
};

export async function readShown(tx: Tx, lotId: string): Promise<Shown | undefined> {
  const entries = await tx.lot.findFirst({ where: { id: lotId }, select: columns });
  if (!entries) return undefined;
  const { inputs, weighings, readings, packings } = entries;
  const described = await namesNow(tx, {
    item: [
      ...inputs.flatMap(({ receipt }) => receipt?.itemId ?? []),
      ...weighings.flatMap(({ itemId, receipt }) => [itemId, receipt?.itemId ?? itemId]),
    ],
    supplier: inputs.flatMap(({ receipt }) => receipt?.supplierId ?? []),
    product: inputs.flatMap(({ sourceLot }) => sourceLot?.productId ?? []),
    customer: packings.flatMap(({ shipmentLines }) => shipmentLines.map(({ shipment }) => shipment.customerId)),
  });
  const used = [...readings, ...weighings].flatMap(({ instrumentId }) => instrumentId ?? []);
  const checks = await checksOfInstruments(tx, used);
  const instruments = await instrumentNames(
    tx,
    readings.flatMap(({ instrumentId }) => instrumentId ?? []),
  );
  return { ...entries, checks, people: await personNames(tx), names: new Map([...described, ...instruments]) };
}

async function instrumentNames(tx: Tx, ids: string[]): Promise<[string, string][]> {
  if (ids.length === 0) return [];
  const rows = await tx.instrument.findMany({ where: { id: { in: [...new Set(ids)] } }, select: { id: true, name: true } });
  return rows.map(({ id, name }) => [id, name]);
}
