import type { LotRecordData } from '../lot-record-data';
import { facts } from '../page/facts';
import { masthead } from '../page/masthead';
import type { Sheet } from '../page/sheet';
import { bothTimes } from '../parts/entered';

export function lotHead(sheet: Sheet, { lot, sheet: { establishment } }: LotRecordData): void {
  const { pen, area, say } = sheet;
  const { name, number } = establishment;
  const maker = [name, number && say('est-number', { number })].filter(Boolean).join(', ');
  sheet.put(
    masthead(sheet, {
      title: lot.code,
      subtitle: lot.product,
      aside: { label: say('where-it-stands'), value: lot.stands, because: lot.because },
    }),
    ...facts(pen, area, [
      { label: say('started'), value: `${bothTimes(lot.started, sheet)}, ${lot.started.by}` },
      { label: say('plan'), value: lot.plan },
      ...(lot.formula ? [{ label: say('formula'), value: lot.formula }] : []),
      ...(lot.productCode ? [{ label: say('product-code'), value: lot.productCode }] : []),
      ...(lot.facts ?? []),
      { label: say('made-by'), value: maker },
    ]),
  );
}
