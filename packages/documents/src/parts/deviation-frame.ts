import type { DeviationData, DispositionData, StatementData } from '../entry-data';
import type { Signed } from '../sheet-data';
import type { Block } from '../page/block';
import { remark } from '../page/facts';
import { framed } from '../page/frame';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { words, type Paragraph } from '../page/words';
import { missInWords, whyMissed } from './missed';
import { sourceInWords } from './verdict-words';

/** The parts a corrective action must have, as 9 CFR 417.3(a) numbers them. */
const parts = [
  { key: 'cause', paragraph: '417.3(a)(1)', asks: 'Cause identified and eliminated' },
  { key: 'underControl', paragraph: '417.3(a)(2)', asks: 'Control point under control again' },
  { key: 'prevention', paragraph: '417.3(a)(3)', asks: 'Measures to prevent recurrence' },
  { key: 'product', paragraph: '417.3(a)(4)', asks: 'No injurious or adulterated product enters commerce' },
] as const;

/** One deviation in its heavy frame: what was missed, the four parts, what became of the product, closing. */
export function deviationFrame(sheet: Sheet, deviation: DeviationData): Block[] {
  const { pen, area } = sheet;
  return framed(pen, area, [
    heading(pen, area, deviation.controlPoint, { number: deviation.number }),
    remark(
      pen, area, 'Missed', words('strong', missInWords(deviation.verdict)), ...whyMissed(deviation.verdict),
      words('small', sourceInWords(deviation.verdict.source))
    ),
    remark(pen, area, 'Opened', signed(sheet, deviation.opened)),
    ...parts.map(({ key, paragraph, asks }) =>
      remark(pen, area, paragraph, words('smallStrong', asks), ...statements(sheet, deviation[key]))),
    remark(pen, area, 'Disposition', ...dispositions(sheet, deviation.dispositions)),
    remark(pen, area, 'Closed', ...closing(sheet, deviation)),
  ]);
}

function statements(sheet: Sheet, all: StatementData[]): Paragraph[] {
  if (!all.length) return [words('slanted', 'Not recorded.')];
  return all.flatMap(({ text, ...by }) => [words('body', text), signed(sheet, by)]);
}

function dispositions(sheet: Sheet, all: DispositionData[]): Paragraph[] {
  if (!all.length) return [words('slanted', 'Not decided.')];
  return all.flatMap(({ decision, quantity, why, ...by }) => [
    words('body', { text: `${decision}: ${quantity}`, style: 'strong' }, why && `. ${why}`),
    signed(sheet, by),
  ]);
}

function closing(sheet: Sheet, { closed }: DeviationData): Paragraph[] {
  if (!closed) return [words('strong', 'Open. The lot is on hold.')];
  return [...(closed.statement ? [words('body', closed.statement)] : []), signed(sheet, closed)];
}

function signed({ clock }: Sheet, { by, at }: Signed): Paragraph {
  return words('small', `${by}, ${clock.withZone(at)}`);
}
