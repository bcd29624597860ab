import type { correctReceipt, InputOf, Receipt } from '@larderbook/contracts';
import type { TemperatureUnit } from '@larderbook/haccp';
import { numberOf } from '../../../ui/keypad-text';

type Received = InputOf<typeof correctReceipt>['receipt'];

export type CorrectedDraft = ReturnType<typeof draftOf>;

/** A temperature that is added is in the shop's degrees. */
export const draftOf = (
  {
    item,
    supplier,
    supplierLot,
    supplierEstablishmentNumber,
    killDate,
    packDate,
    weight,
    fractionPercent,
    temperature,
    decision,
    reason,
    made,
  }: Receipt,
  degrees: TemperatureUnit,
) => ({
  itemId: item.itemId,
  supplierId: supplier.supplierId,
  supplierLot,
  supplierEstablishmentNumber,
  killDate,
  packDate,
  weight: String(weight.value),
  unit: weight.unit,
  content: fractionPercent === undefined ? '' : String(fractionPercent),
  temperature: temperature === undefined ? '' : String(temperature.value),
  degrees: temperature?.unit ?? degrees,
  decision,
  why: reason,
  takenAt: made.at,
});

/** A figure that is no number is left for the contract to refuse. */
export function receivedOf({ weight, unit, content, temperature, degrees, why, ...rest }: CorrectedDraft): Received {
  return {
    ...rest,
    reason: why,
    weight: { value: asNumber(weight), unit },
    fractionPercent: content === '' ? undefined : asNumber(content),
    temperature: temperature === '' ? undefined : { value: asNumber(temperature), unit: degrees },
  };
}

const asNumber = (text: string) => numberOf(text) ?? NaN;
