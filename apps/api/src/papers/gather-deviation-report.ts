import type { Deviation } from '@larderbook/contracts';
import type { DeviationReportData, ReadingData } from '@larderbook/documents';
import { showDeviation } from '../deviations/deviations.queries';
import { withMissNow } from '../lots/misses-now';
import { showLot } from '../lots/show-lot';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { showReceipt } from '../receiving/receipts.queries';
import { deviationOnPaper, numberOf } from './deviation-on-paper';
import { entriesOnPaper } from './readings-on-paper';
import { tellingIn, type Telling } from './telling';
import { sheetOf } from './sheet-of';

/** Throws `not-found`. */
export async function gatherDeviationReport(tx: Tx, deviationId: string, by: Person, now: Date): Promise<DeviationReportData> {
  const [deviation] = (await withMissNow(tx, [await showDeviation(tx, deviationId)], now)) as [Deviation];
  const { lot, receipt, controlPoint } = deviation;
  const telling = tellingIn(by.voice);
  return {
    sheet: await sheetOf(tx, by, now),
    lot: lot
      ? { kind: 'lot', code: lot.code, product: lot.productName }
      : { kind: 'delivery', code: receipt?.code ?? '', product: receipt?.itemName ?? '' },
    hazard: controlPoint?.hazard ?? telling.say('hazard-not-of-a-point'),
    preparedAction: controlPoint?.correctiveAction,
    deviation: deviationOnPaper(deviation, telling),
    readings: lot
      ? await readingsOnLot(tx, deviation, lot.lotId, telling, now)
      : await readingOnDelivery(tx, deviation, receipt?.receiptId, telling),
  };
}

async function readingsOnLot(tx: Tx, deviation: Deviation, lotId: string, telling: Telling, now: Date): Promise<ReadingData[]> {
  const shown = await showLot(tx, lotId, now);
  const point = shown.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === deviation.controlPoint?.controlPointId);
  return point ? entriesOnPaper(shown, point, [deviation], telling) : [];
}

async function readingOnDelivery(
  tx: Tx,
  deviation: Deviation,
  receiptId: string | undefined,
  { say, tell }: Telling,
): Promise<ReadingData[]> {
  const receipt = receiptId && (await showReceipt(tx, receiptId));
  if (!receipt || !receipt.temperature) return [];
  const { temperature, verdict, made, supplierLot } = receipt;
  const what = say('at-receipt', { lot: supplierLot });
  return [
    {
      value: String(temperature.value),
      unit: temperature.unit,
      what,
      verdict: verdict && tell(verdict, receipt.limit),
      deviation: numberOf(deviation, say),
      by: made.name,
      at: Date.parse(made.at),
    },
  ];
}
