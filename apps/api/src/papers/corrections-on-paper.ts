import type { Lot } from '@larderbook/contracts';
import type { AmendmentData } from '@larderbook/documents';
import { voidedOf } from './corrected';
import type { Telling } from './telling';
import { formatEntered } from './format-weight';

export const correctionsOnPaper = (lot: Lot, time: Telling): AmendmentData[] =>
  [...lot.corrections.flatMap((correction) => ofGoods(correction, time)), ...voidedOn(lot, time.say)].sort((a, b) => a.at - b.at);

function ofGoods({ what: thing, changes, reason, made, voided }: Lot['corrections'][number], time: Telling): AmendmentData[] {
  return changes.map(({ what, before, after, isMoment }) => {
    const say = (text: string) => (text === '' ? time.say('nothing') : isMoment ? time.instant(Date.parse(text)) : text);
    const signed = { why: reason, by: made.name, at: Date.parse(made.recordedAt) };
    return { ...signed, field: `${thing}, ${what.toLowerCase()}`, was: say(before), now: voided ? undefined : say(after) };
  });
}

function voidedOn({ inputs, weighings, controlPoints }: Lot, say: Telling['say']): AmendmentData[] {
  const told = ({ voided }: Pick<Lot['inputs'][number], 'voided'>, field: string, was: string): AmendmentData[] =>
    voided ? [voidedOf(field, was, voided)] : [];
  return [
    ...inputs.flatMap((input) => told(input, say('input-of', { code: input.from.code }), formatEntered(input.weight))),
    ...weighings.flatMap((weighing) => told(weighing, say('weighing-of', { item: weighing.item.name }), formatEntered(weighing.weight))),
    ...controlPoints.flatMap(({ controlPoint, readings }) =>
      readings.flatMap((reading) => told(reading, say('reading-at-point', { point: controlPoint.name }), sayReading(reading.entered, say))),
    ),
  ];
}

const sayReading = (entered: Lot['controlPoints'][number]['readings'][number]['entered'], say: Telling['say']): string =>
  'answer' in entered ? say(entered.answer ? 'yes-answer' : 'no-answer') : `${entered.value} ${entered.unit}`;
