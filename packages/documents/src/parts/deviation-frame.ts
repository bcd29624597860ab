import type { ActionPartData, DeviationData, DispositionData, StruckData } from '../entry-data';
import type { Signed } from '../sheet-data';
import type { Block } from '../page/block';
import { remark } from '../page/facts';
import { framed } from '../page/frame';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { given, words, type Paragraph } from '../page/words';
import { bothTimes } from './entered';
import { missInWords, whyMissed } from './missed';
import { sourceInWords } from './verdict-words';

/** One deviation in its heavy frame: what was missed, the parts of its form, what became of the product, closing. */
export function deviationFrame(sheet: Sheet, deviation: DeviationData): Block[] {
  const { pen, area } = sheet;
  return framed(pen, area, [
    heading(pen, area, deviation.controlPoint, { number: deviation.number, aside: deviation.answeredUnder }),
    remark(
      pen,
      area,
      deviation.verdict.kind === 'met' ? `${deviation.kind}, met now` : deviation.kind,
      words('strong', missInWords(deviation.verdict)),
      ...whyMissed(deviation.verdict),
      words('small', sourceInWords(deviation.verdict.source)),
    ),
    remark(pen, area, 'Opened', ...openedWith(deviation), signed(sheet, deviation.opened)),
    ...(deviation.recurrence.length
      ? [remark(pen, area, 'Repeats', ...deviation.recurrence.map((earlier) => words('body', earlier)))]
      : []),
    ...deviation.parts.map(({ paragraph, asks, said }) =>
      remark(pen, area, paragraph ?? 'Done', words('smallStrong', asks), ...statements(sheet, said)),
    ),
    remark(pen, area, 'Disposition', ...dispositions(sheet, deviation)),
    remark(pen, area, 'Closed', ...closing(sheet, deviation)),
  ]);
}

/** What was missed when it was opened, where the records say otherwise since. */
function openedWith({ openedWith: verdict }: DeviationData): Paragraph[] {
  return verdict ? [words('small', { text: 'When opened: ', style: 'smallStrong' }, missInWords(verdict))] : [];
}

function statements(sheet: Sheet, all: ActionPartData['said']): Paragraph[] {
  const recorded = all.flatMap(({ text, struck, ...by }) => [
    words('body', { text, strike: struck !== undefined }),
    signed(sheet, by),
    ...(struck ? striking(sheet, struck) : []),
  ]);
  return all.some(({ struck }) => !struck) ? recorded : [...recorded, words('slanted', 'Not recorded.')];
}

function dispositions(sheet: Sheet, { dispositions: all, undecided }: DeviationData): Paragraph[] {
  const open = undecided ? [words('strong', `Not decided: ${undecided}.`)] : [];
  if (!all.length) return open.length ? open : [words('slanted', 'There was no product to decide about.')];
  return [...all.flatMap((one) => disposition(sheet, one)), ...open];
}

function disposition(sheet: Sheet, one: DispositionData): Paragraph[] {
  const { decision, quantity, why, alsoFor, destroyed, notDestroyed = [], voided, toDestroy, ...by } = one;
  return given(
    words('body', { text: `${decision}: ${quantity}`, style: 'strong', strike: voided !== undefined }, why && `. ${why}`),
    alsoFor && words('smallInk', `The same decision speaks for ${alsoFor}.`),
    signed(sheet, by),
    ...notDestroyed.flatMap((record) => [
      words('body', { text: `Destroyed: ${record.destroyed.text}`, strike: true }),
      signed(sheet, record.destroyed),
      ...striking(sheet, record.voided),
    ]),
    destroyed && words('body', { text: 'Destroyed: ', style: 'strong' }, destroyed.text),
    destroyed && signed(sheet, destroyed),
    toDestroy && words('smallStrong', 'Not yet destroyed: held apart.'),
    ...(voided ? striking(sheet, voided) : []),
  );
}

const striking = (sheet: Sheet, { text, how, ...by }: StruckData): Paragraph[] => [
  words('body', { text: `${how.charAt(0).toUpperCase()}${how.slice(1)}: `, style: 'strong' }, text),
  signed(sheet, by),
];

function closing(sheet: Sheet, { closed, notClosed = [] }: DeviationData): Paragraph[] {
  const before = notClosed.flatMap(({ statement, struck, ...by }) => [
    words('body', { text: statement ?? 'Closed.', strike: true }),
    signed(sheet, by),
    ...striking(sheet, struck),
  ]);
  if (!closed) return [...before, words('strong', 'Open. The lot is on hold.')];
  return [...before, ...(closed.statement ? [words('body', closed.statement)] : []), signed(sheet, closed)];
}

function signed({ clock }: Sheet, { by, ...stated }: Signed): Paragraph {
  return words('small', `${by}, ${bothTimes(stated, (at) => clock.withZone(at))}`);
}
