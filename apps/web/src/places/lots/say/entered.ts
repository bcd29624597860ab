import type { Lot } from '@larderbook/contracts';
import type { EnteredMass, Quantity } from '@larderbook/haccp';
import { sayAnswered, type SayOf } from '@larderbook/messages';
import type { useFigures } from '../../../ui/voice';

type Entered = Lot['controlPoints'][number]['readings'][number]['entered'];
type Figures = Pick<ReturnType<typeof useFigures>, 'quantity'>;

/** "151.5 °F", "pH 5.3", "yes: label read". */
export function enteredValue(entered: Entered, say: SayOf<'entries'>, figures: Figures): string {
  if ('unit' in entered) return figures.quantity(entered);
  const answer = entered.answer ? 'yes' : 'no';
  const seen = sayAnswered(entered, say);
  return seen ? say(`${answer}-seen`, { seen }) : say(answer);
}

export const enteredWeight = ({ value, unit }: EnteredMass): Quantity => ({ value: String(value), unit });

/** A probe named by a number alone becomes "probe 1". */
export const probeName = (probe: string, say: SayOf<'entries'>): string => (/^\d+$/.test(probe) ? say('probe', { number: probe }) : probe);
