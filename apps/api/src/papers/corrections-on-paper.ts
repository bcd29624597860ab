import type { Lot } from '@larderbook/contracts';
import type { AmendmentData } from '@larderbook/documents';
import { voidedOf } from './corrected';
import type { SayTime } from './say-time';
import { sayEntered } from './say-weight';

/** What was corrected or voided of deliveries, stages and goods, and every entry that was voided. */
export const correctionsOnPaper = (lot: Lot, time: SayTime): AmendmentData[] =>
  [...lot.corrections.flatMap((correction) => ofGoods(correction, time)), ...voidedOn(lot)].sort((a, b) => a.at - b.at);

function ofGoods({ what: thing, changes, reason, made, voided }: Lot['corrections'][number], time: SayTime): AmendmentData[] {
  return changes.map(({ what, before, after, isMoment }) => {
    const say = (text: string) => (text === '' ? 'nothing' : isMoment ? time.instant(Date.parse(text)) : text);
    const signed = { why: reason, by: made.name, at: Date.parse(made.recordedAt) };
    return { ...signed, field: `${thing}, ${what.toLowerCase()}`, was: say(before), now: voided ? undefined : say(after) };
  });
}

function voidedOn({ inputs, weighings, controlPoints }: Lot): AmendmentData[] {
  const told = ({ voided }: Pick<Lot['inputs'][number], 'voided'>, field: string, was: string): AmendmentData[] =>
    voided ? [voidedOf(field, was, voided)] : [];
  return [
    ...inputs.flatMap((input) => told(input, `input of ${input.from.code}`, sayEntered(input.weight))),
    ...weighings.flatMap((weighing) => told(weighing, `weighing of ${weighing.item.name}`, sayEntered(weighing.weight))),
    ...controlPoints.flatMap(({ controlPoint, readings }) =>
      readings.flatMap((reading) => told(reading, `reading at ${controlPoint.name}`, sayReading(reading.entered))),
    ),
  ];
}

const sayReading = (entered: Lot['controlPoints'][number]['readings'][number]['entered']): string =>
  'answer' in entered ? (entered.answer ? 'yes' : 'no') : `${entered.value} ${entered.unit}`;
