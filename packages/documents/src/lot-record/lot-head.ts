import type { LotRecordData } from '../lot-record-data';
import { facts } from '../page/facts';
import { masthead } from '../page/masthead';
import type { Sheet } from '../page/sheet';
import { bothTimes } from '../parts/entered';

/** The lot at the head of its first page: its code, what it is, where it stands. */
export function lotHead(sheet: Sheet, { lot, sheet: { establishment } }: LotRecordData): void {
  const { pen, area, clock } = sheet;
  const maker = [establishment.name, establishment.number && `Est. ${establishment.number}`].filter(Boolean).join(', ');
  sheet.put(
    masthead(sheet, {
      title: lot.code,
      subtitle: lot.product,
      aside: { label: 'Where it stands', value: lot.stands, because: lot.because },
    }),
    ...facts(pen, area, [
      { label: 'Started', value: `${bothTimes(lot.started, (at) => clock.dayAndTime(at))}, ${lot.started.by}` },
      { label: 'Plan', value: lot.plan },
      ...(lot.formula ? [{ label: 'Formula', value: lot.formula }] : []),
      ...(lot.productCode ? [{ label: 'Product code', value: lot.productCode }] : []),
      ...(lot.facts ?? []),
      { label: 'Made by', value: maker },
    ]),
  );
}
