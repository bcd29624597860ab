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
import type { SayOnPaper } from '../page/telling';

export function deviationFrame(sheet: Sheet, deviation: DeviationData): Block[] {
  const { pen, area, say } = sheet;
  return framed(pen, area, [
    heading(pen, area, deviation.controlPoint, { number: deviation.number, aside: deviation.answeredUnder }),
    remark(
      pen,
      area,
      deviation.verdict.kind === 'met' ? say('met-now', { kind: deviation.kind }) : deviation.kind,
      words('strong', missInWords(deviation.verdict, say)),
      ...whyMissed(deviation.verdict, say),
      words('small', sourceInWords(deviation.verdict.source, say)),
    ),
    remark(pen, area, say('opened'), ...openedWith(deviation, say), signed(sheet, deviation.opened)),
    ...(deviation.recurrence.length
      ? [remark(pen, area, say('repeats'), ...deviation.recurrence.map((earlier) => words('body', earlier)))]
      : []),
    ...deviation.parts.map(({ paragraph, asks, said }) =>
      remark(pen, area, paragraph ?? say('done'), words('smallStrong', asks), ...statements(sheet, said)),
    ),
    remark(pen, area, say('disposition'), ...dispositions(sheet, deviation)),
    remark(pen, area, say('closed'), ...closing(sheet, deviation)),
  ]);
}

/** Told only where the records say otherwise since. */
function openedWith({ openedWith: verdict }: DeviationData, say: SayOnPaper): Paragraph[] {
  return verdict ? [words('small', { text: `${say('when-opened')} `, style: 'smallStrong' }, missInWords(verdict, say))] : [];
}

function statements(sheet: Sheet, all: ActionPartData['said']): Paragraph[] {
  const recorded = all.flatMap(({ text, struck, ...by }) => [
    words('body', { text, strike: struck !== undefined }),
    signed(sheet, by),
    ...(struck ? striking(sheet, struck) : []),
  ]);
  return all.some(({ struck }) => !struck) ? recorded : [...recorded, words('slanted', sheet.say('not-recorded'))];
}

function dispositions(sheet: Sheet, { dispositions: all, undecided }: DeviationData): Paragraph[] {
  const open = undecided ? [words('strong', sheet.say('not-decided', { weight: undecided }))] : [];
  if (!all.length) return open.length ? open : [words('slanted', sheet.say('no-product'))];
  return [...all.flatMap((one) => disposition(sheet, one)), ...open];
}

function disposition(sheet: Sheet, one: DispositionData): Paragraph[] {
  const { decision, quantity, why, alsoFor, destroyed, notDestroyed = [], voided, toDestroy, ...by } = one;
  const { say } = sheet;
  return given(
    words('body', { text: say('decision-on', { decision, quantity }), style: 'strong', strike: voided !== undefined }, why && `. ${why}`),
    alsoFor && words('smallInk', say('also-for', { others: alsoFor })),
    signed(sheet, by),
    ...notDestroyed.flatMap((record) => [
      words('body', { text: say('destroyed-how', { how: record.destroyed.text }), strike: true }),
      signed(sheet, record.destroyed),
      ...striking(sheet, record.voided),
    ]),
    destroyed && words('body', { text: `${say('destroyed')} `, style: 'strong' }, destroyed.text),
    destroyed && signed(sheet, destroyed),
    toDestroy && words('smallStrong', say('not-yet-destroyed')),
    ...(voided ? striking(sheet, voided) : []),
  );
}

const striking = (sheet: Sheet, { text, how, ...by }: StruckData): Paragraph[] => [
  words('body', { text: `${sheet.say(how === 'taken back' ? 'taken-back' : how)} `, style: 'strong' }, text),
  signed(sheet, by),
];

function closing(sheet: Sheet, { closed, notClosed = [] }: DeviationData): Paragraph[] {
  const before = notClosed.flatMap(({ statement, struck, ...by }) => [
    words('body', { text: statement ?? sheet.say('closed-plainly'), strike: true }),
    signed(sheet, by),
    ...striking(sheet, struck),
  ]);
  if (!closed) return [...before, words('strong', sheet.say('open-on-hold'))];
  return [...before, ...(closed.statement ? [words('body', closed.statement)] : []), signed(sheet, closed)];
}

function signed(sheet: Sheet, { by, ...stated }: Signed): Paragraph {
  return words('small', `${by}, ${bothTimes(stated, sheet, true)}`);
}
