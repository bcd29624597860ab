import type { Prisma } from '../generated/prisma/client';
import { namesNow } from '../ledger/rows-that-count';
import { personNames, type PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';

const inOrder = [{ takenAt: 'asc' as const }, { recordedAt: 'asc' as const }, { id: 'asc' as const }];
const made = { flags: true, station: true, takenAt: true, recordedAt: true, recordedBy: true } as const;
const amendable = { ...made, id: true, amendsId: true, reason: true } as const;
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
      judged: true,
      receipt: { select: { id: true, code: true, supplierLot: true } },
    },
    orderBy: inOrder,
  },
  readings: { select: { ...amendable, instrumentId: true } },
  packings: {
    select: {
      ...made,
      id: true,
      code: true,
      count: true,
      netValue: true,
      netUnit: true,
      netGrams: true,
      useBy: true,
      shipmentLines: {
        select: { count: true, shipment: { select: { id: true, number: true, takenAt: true, customerId: true } } },
      },
    },
    orderBy: [{ takenAt: 'asc' }, { code: 'asc' }],
  },
  removals: {
    select: { ...weight, id: true, kind: true, note: true, station: true, takenAt: true, recordedAt: true, recordedBy: true },
    orderBy: { takenAt: 'asc' },
  },
} satisfies Prisma.LotSelect;

/** What the page of a lot shows beside what decides where it stands: every entry in full. */
export type Shown = Prisma.LotGetPayload<{ select: typeof columns }> & {
  people: PersonNames;
  /** Items, suppliers, products, customers and instruments by id, as they are called now. */
  names: ReadonlyMap<string, string>;
};

export async function readShown(tx: Tx, lotId: string): Promise<Shown | undefined> {
  const entries = await tx.lot.findFirst({ where: { id: lotId }, select: columns });
  if (!entries) return undefined;
  const { inputs, weighings, readings, packings } = entries;
  const described = await namesNow(tx, {
    item: [...inputs.flatMap(({ receipt }) => receipt?.itemId ?? []), ...weighings.map(({ itemId }) => itemId)],
    supplier: inputs.flatMap(({ receipt }) => receipt?.supplierId ?? []),
    product: inputs.flatMap(({ sourceLot }) => sourceLot?.productId ?? []),
    customer: packings.flatMap(({ shipmentLines }) => shipmentLines.map(({ shipment }) => shipment.customerId)),
  });
  const instruments = await instrumentNames(tx, readings.flatMap(({ instrumentId }) => instrumentId ?? []));
  return { ...entries, people: await personNames(tx), names: new Map([...described, ...instruments]) };
}

async function instrumentNames(tx: Tx, ids: string[]): Promise<[string, string][]> {
  if (ids.length === 0) return [];
  const rows = await tx.instrument.findMany({ where: { id: { in: [...new Set(ids)] } }, select: { id: true, name: true } });
  return rows.map(({ id, name }) => [id, name]);
}
