import { recordReceipt, type InputOf } from '@larderbook/contracts';
import { degrees, judgeRange, type EnteredMass, type TemperatureUnit, type Told, type Verdict } from '@larderbook/haccp';
import { codeOf, type SayOf } from '@larderbook/messages';
import { check, type FieldErrors } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import type { Item, Supplier } from '../known';
import { receivingRange } from './receiving-units';

export type Label = { supplierLot: string; supplierEstablishmentNumber: string; killDate: string; packDate: string; fraction: string };
export type Measured = { value: number; unit: TemperatureUnit; sure: boolean };

export type DeliveryDraft = {
  item?: Item;
  supplier?: Supplier;
  label: Label;
  weight?: EnteredMass;
  /** `none`: it was not measured. */
  temperature?: Measured | 'none';
  /** ISO 8601; undefined for now, empty while what is typed is no moment. */
  came?: string;
  /** Of refusing it, or of accepting it all the same. */
  reason?: string;
};
export type DeliveryStep = 'item' | 'supplier' | 'label' | 'weight' | 'temperature' | 'decision';

export const emptyLabel: Label = { supplierLot: '', supplierEstablishmentNumber: '', killDate: '', packDate: '', fraction: '' };

/** Only meat and what has a receiving range is measured. */
export function stepsFor(item: Item | undefined): DeliveryStep[] {
  const isMeasured = item === undefined || item.kind === 'meat' || receivingRange(item) !== undefined;
  return ['item', 'supplier', 'label', 'weight', ...(isMeasured ? (['temperature'] as const) : []), 'decision'];
}

/** What is known of the supplier and the item is filled in. */
export const labelFor = (item: Item | undefined, supplier: Supplier | undefined): Label => ({
  ...emptyLabel,
  supplierEstablishmentNumber: supplier?.establishmentNumber ?? '',
  fraction: item?.fractionPercent === undefined ? '' : String(item.fractionPercent),
});

const ofLabel = recordReceipt.body.pick({ supplierLot: true, killDate: true, packDate: true, fractionPercent: true });

type Says = { say: SayOf<'receiving'>; sayLimits: SayOf<'limits'> };

/** `today` is the day by the shop's clock. */
export function labelErrors(label: Label, item: Item | undefined, today: string, { say, sayLimits }: Says): FieldErrors {
  const { killDate, packDate } = label;
  const dates: FieldErrors = {
    ...(killDate && packDate && packDate < killDate && { packDate: say('pack-before-kill') }),
    ...(packDate > today && { packDate: say('pack-to-come') }),
    ...(killDate > today && { killDate: say('kill-to-come') }),
  };
  const fraction: FieldErrors =
    item?.substance && label.fraction === ''
      ? { fractionPercent: say('copy-percent', { substance: sayLimits(codeOf('substance', item.substance)) }) }
      : {};
  return { ...dates, ...fraction, ...check(ofLabel, fieldsOf(label, item)).errors };
}

const fieldsOf = ({ supplierLot, supplierEstablishmentNumber, killDate, packDate, fraction }: Label, item: Item | undefined) => ({
  supplierLot: supplierLot.trim(),
  supplierEstablishmentNumber: supplierEstablishmentNumber.trim() || undefined,
  killDate: killDate || undefined,
  packDate: packDate || undefined,
  fractionPercent: item?.substance ? numberOf(fraction) : undefined,
});

/** Uses the function the server uses; only the server's verdict counts. */
export function verdictOf(item: Item | undefined, temperature: DeliveryDraft['temperature']): Verdict | undefined {
  const range = item && receivingRange(item);
  if (!range || !temperature || temperature === 'none') return undefined;
  return judgeRange(degrees(temperature.value, temperature.unit), range);
}

/** There is no lot yet to set aside. */
export function atTheDoor(verdict: Told, say: SayOf<'receiving'>, decision?: 'accepted' | 'refused'): Told {
  if (verdict.kind === 'met' || decision === 'refused') return { ...verdict, next: undefined };
  return {
    ...verdict,
    next: say(decision === 'accepted' ? 'keep-apart' : 'refuse-or-say'),
  };
}

/** Undefined when it may be accepted without a word. */
export function objectionTo(draft: DeliveryDraft): 'needs a temperature' | 'needs a reason' | undefined {
  const range = draft.item && receivingRange(draft.item);
  if (range && (!draft.temperature || draft.temperature === 'none')) return 'needs a temperature';
  const verdict = verdictOf(draft.item, draft.temperature);
  return verdict && verdict.kind !== 'met' ? 'needs a reason' : undefined;
}

export type Decided = { receiptId: string; decision: 'accepted' | 'refused'; reason: string; takenAt: string };

export function receiptOf(
  { item, supplier, label, weight, temperature }: DeliveryDraft,
  decided: Decided,
): InputOf<typeof recordReceipt> | undefined {
  if (!item || !supplier || !weight) return undefined;
  const measured = temperature === 'none' ? undefined : temperature;
  return {
    ...decided,
    itemId: item.itemId,
    supplierId: supplier.supplierId,
    ...fieldsOf(label, item),
    weight,
    temperature: measured && { value: measured.value, unit: measured.unit },
    sure: measured?.sure || undefined,
  };
}

/** The step that puts right what the server refused. */
export function stepOf(fields: FieldErrors, code: string | undefined): DeliveryStep | undefined {
  if (code === 'implausible-value' || code === 'temperature-missing') return 'temperature';
  const [field = ''] = Object.keys(fields).map((each) => each.split('.')[0]);
  if (/^(killDate|packDate|supplierLot|supplierEstablishmentNumber|fractionPercent)$/.test(field)) return 'label';
  return field === 'weight' || field === 'temperature' ? field : undefined;
}
