import type { Deviation } from '@larderbook/contracts';
import type { DeviationReportData, ReadingData } from '@larderbook/documents';
import { showDeviation } from '../deviations/deviations.queries';
import { withMissNow } from '../lots/misses-now';
import { showLot } from '../lots/show-lot';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { showReceipt } from '../receiving/receipts.queries';
import { deviationOnPaper, sayNumber } from './deviation-on-paper';
import { entriesOnPaper } from './readings-on-paper';
import { sayTimeFor } from './say-time';
import { sheetOf } from './sheet-of';

/** One deviation with its corrective action, and the readings it is about. Throws `not-found`. */
export async function gatherDeviationReport(tx: Tx, deviationId: string, by: Person, now: Date): Promise<DeviationReportData> {
  const [deviation] = (await withMissNow(tx, [await showDeviation(tx, deviationId)], now)) as [Deviation];
  const { lot, receipt, controlPoint } = deviation;
  return {
    sheet: await sheetOf(tx, by, now),
    lot: lot
      ? { kind: 'lot', code: lot.code, product: lot.productName }
      : { kind: 'delivery', code: receipt?.code ?? '', product: receipt?.itemName ?? '' },
    hazard: controlPoint?.hazard ?? 'Not one of a control point of the plan.',
    preparedAction: controlPoint?.correctiveAction,
    deviation: deviationOnPaper(deviation, sayTimeFor(by.establishment)),
    readings: lot ? await readingsOnLot(tx, deviation, lot.lotId, by, now) : await readingOnDelivery(tx, deviation, receipt?.receiptId),
  };
}

async function readingsOnLot(tx: Tx, deviation: Deviation, lotId: string, { establishment }: Person, now: Date): Promise<ReadingData[]> {
  const shown = await showLot(tx, lotId, now);
  const point = shown.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === deviation.controlPoint?.controlPointId);
  return point ? entriesOnPaper(shown, point, [deviation], sayTimeFor(establishment)) : [];
}

async function readingOnDelivery(tx: Tx, deviation: Deviation, receiptId: string | undefined): Promise<ReadingData[]> {
  const receipt = receiptId && (await showReceipt(tx, receiptId));
  if (!receipt || !receipt.temperature) return [];
  const { temperature, verdict, made, supplierLot } = receipt;
  const what = `at receipt, lot ${supplierLot}`;
  return [
    {
      value: String(temperature.value),
      unit: temperature.unit,
      what,
      verdict,
      deviation: sayNumber(deviation),
      by: made.name,
      at: Date.parse(made.at),
    },
  ];
}
