import type { Lot } from '@larderbook/contracts';
import type { LotData, LotRecordData, MeatBlockData, ShipmentData } from '@larderbook/documents';
import { massOf, type MassUnit, type TemperatureUnit } from '@larderbook/haccp';
import { showLotWithPoints } from '../lots/show-lot';
import { shipmentsOfLot, type Shipment } from '../shipping/shipments.queries';
import type { Tx } from '../platform/database';
import { massOfGrams } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { planById } from '../products/plan-in-force';
import { productsNow } from '../products/products-now';
import { findings } from '../reviews/findings';
import { besideLot } from '../reviews/show-review';
import { balanceOnPaper } from './balance-on-paper';
import { controlPointsOnPaper } from './control-points-on-paper';
import { correctionsOnPaper } from './corrections-on-paper';
import { corrected } from './corrected';
import { deviationOnPaper } from './deviation-on-paper';
import { inputsOnPaper, lossesOnPaper, packagesOnPaper, weighingsOnPaper, type Delivered } from './goods-on-paper';
import { instrumentsOfLot } from './instruments-on-paper';
import { outstandingOf, reviewsOnPaper } from './reviews-on-paper';
import { tellingIn, type Telling } from './telling';
import { formatWeight } from './format-weight';
import { bareNumber, sheetOf } from './sheet-of';

/** Throws `not-found`. */
export async function gatherLotRecord(tx: Tx, lotId: string, by: Person, now: Date): Promise<LotRecordData> {
  const { establishment } = by;
  const unit: { mass: MassUnit; heat: TemperatureUnit } =
    establishment.units === 'US' ? { mass: 'lb', heat: '°F' } : { mass: 'kg', heat: '°C' };
  const telling = tellingIn(by.voice);
  const { say } = telling;
  const shown = await showLotWithPoints(tx, lotId, now);
  const { lot } = shown;
  const beside = await besideLot(tx, lot, by, now);
  const oldestFirst = beside.deviations;
  const own = oldestFirst.filter((deviation) => deviation.lot?.lotId === lotId);
  const plan = await planById(tx, lot.plan.planId);
  if (!plan) throw new Error(`Lot ${lotId} names plan ${lot.plan.planId}, which is not there`);

  return {
    sheet: await sheetOf(tx, by, now),
    lot: await lotOnPaper(tx, lot, unit.mass, telling),
    inputs: inputsOnPaper(lot, await deliveriesTo(tx, lot), say),
    meatBlock: meatBlockOf(lot, unit.mass, say),
    weighings: weighingsOnPaper(lot, plan.content, own, telling),
    controlPoints: controlPointsOnPaper(shown, plan.content, own, unit.heat, telling),
    deviations: oldestFirst.map((deviation) => deviationOnPaper(deviation, telling)),
    packages: packagesOnPaper(lot, telling.day),
    shipments: (await shipmentsOfLot(tx, lotId)).map((shipment) => shipmentOnPaper(shipment, lotId, say)),
    losses: lossesOnPaper(lot, telling),
    balance: await balanceOnPaper(tx, lot, beside.weights, unit.mass, say),
    corrections: correctionsOnPaper(lot, telling),
    reviews: await reviewsOnPaper(tx, lot, telling),
    outstanding: outstandingOf(lot, findings(lot, beside), telling),
    instruments: await instrumentsOfLot(tx, lotId, telling),
  };
}

async function lotOnPaper(tx: Tx, lot: Lot, unit: MassUnit, { say, of, account }: Telling): Promise<LotData> {
  const product = (await productsNow(tx, [lot.productId])).get(lot.productId);
  const packed = lot.packings.reduce((sum, { count, net }) => sum + massOf(net) * BigInt(count), 0n);
  const meat = massOfGrams(lot.meatBlockGrams);
  const facts = [
    {
      label: say('packed-fact'),
      value: packed > 0n ? say('packed-in', { weight: formatWeight(packed, unit), count: lot.packages }) : say('nothing-packed'),
    },
    ...(packed > 0n && meat > 0n
      ? [{ label: say('yield'), value: say('of-meat-block', { share: `${((Number(packed) / Number(meat)) * 100).toFixed(1)} %` }) }]
      : []),
    ...(lot.storage ? [{ label: say('storage'), value: lot.storage }] : []),
    ...(lot.note ? [{ label: say('note'), value: lot.note }] : []),
  ];
  return {
    code: lot.code,
    product: lot.productName,
    productCode: product?.code,
    plan: say('title-version', { title: lot.plan.title, version: String(lot.plan.version) }),
    formula: say('title-version', { title: lot.productName, version: String(lot.formula.version) }),
    started: { by: lot.made.name, at: Date.parse(lot.startedAt), enteredAt: Date.parse(lot.made.recordedAt) },
    stands: of('lots')(`standing-${lot.standing}`),
    because: account(lot.because),
    facts,
  };
}

function meatBlockOf({ meatBlockGrams, inputs }: Lot, unit: MassUnit, say: Telling['say']): MeatBlockData | undefined {
  if (meatBlockGrams === 0) return undefined;
  const taken = corrected(inputs, ({ inputId }) => inputId).map(({ entry }) => entry);
  const whole = taken.reduce((sum, { weight }) => sum + massOf(weight), 0n);
  const cut = whole - taken.reduce((sum, { trimmed }) => sum + massOf(trimmed), 0n);
  return {
    weight: formatWeight(massOfGrams(meatBlockGrams), unit),
    made: cut > 0n ? say('less-trimmings', { taken: formatWeight(whole, unit), cut: formatWeight(cut, unit) }) : undefined,
  };
}

async function deliveriesTo(tx: Tx, { inputs }: Lot): Promise<ReadonlyMap<string, Delivered>> {
  const receipts = await tx.receipt.findMany({
    where: { id: { in: inputs.flatMap(({ from }) => from.receiptId ?? []) } },
    select: { id: true, supplierEstablishmentNumber: true, takenAt: true },
  });
  return new Map(
    receipts.map(({ id, supplierEstablishmentNumber, takenAt }) => [
      id,
      {
        establishmentNumber: supplierEstablishmentNumber ? bareNumber(supplierEstablishmentNumber) : undefined,
        receivedAt: takenAt.getTime(),
      },
    ]),
  );
}

function shipmentOnPaper({ customer, document, number, lines, made }: Shipment, lotId: string, say: Telling['say']): ShipmentData {
  const what = lines
    .filter((line) => line.lotId === lotId)
    .map(({ count, packingCode }) => say('packages-of', { count, code: packingCode }));
  return {
    customer: customer.name,
    what: what.join(', '),
    document: document || say('shipment-number', { number: String(number) }),
    by: made.name,
    at: Date.parse(made.at),
    enteredAt: Date.parse(made.recordedAt),
  };
}
