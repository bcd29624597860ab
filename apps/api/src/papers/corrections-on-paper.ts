import type { Lot, Said } from '@larderbook/contracts';
import type { AmendmentData } from '@larderbook/documents';
import { voidedOf } from './corrected';
import type { Telling } from './telling';
import { formatEntered } from './format-weight';

export const correctionsOnPaper = (lot: Lot, telling: Telling): AmendmentData[] =>
  [...lot.corrections.flatMap((correction) => ofGoods(correction, telling)), ...voidedOn(lot, telling.say)].sort((a, b) => a.at - b.at);

function ofGoods({ what: thing, changes, reason, made, voided }: Lot['corrections'][number], { say, said }: Telling): AmendmentData[] {
  const signed = { why: said(reason), by: made.name, at: Date.parse(made.recordedAt) };
  const orNothing = (value: Said | undefined) => (value === undefined ? say('nothing') : said(value));
  return changes.map(({ what, before, after }) => ({
    ...signed,
    field: say('field-of', { thing: said(thing), field: said(what) }),
    was: orNothing(before),
    now: voided ? undefined : orNothing(after),
  }));
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
  'answer' in entered ? say(entered.answer ? 'yes' : 'no') : `${entered.value} ${entered.unit}`;
