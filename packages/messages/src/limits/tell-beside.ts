import type { ClockStart } from '@larderbook/contracts';
import { asGiven, isStirred, timeOf, type Frequency, type InstrumentErrors, type Piece, type ScaleError } from '@larderbook/haccp';
import type { SayLimits } from './limit-voice';
import { figureOf } from './tell-bounds';

/** "at least every 30 min", "at least 3 times in a lot" */
export const tellFrequency = (frequency: Frequency, say: SayLimits): string =>
  'everyMinutes' in frequency
    ? say('frequency-every', { time: timeOf(frequency.everyMinutes * 60_000) })
    : say('frequency-times', { times: frequency.timesInALot });

/** "cylinder, 22 mm at its thinnest" */
export function tellPiece(piece: Piece, say: SayLimits): string {
  if (isStirred(piece)) return say('piece-stirred');
  const { value, unit } = piece.smallest;
  return say(`piece-${piece.shape}`, { size: asGiven(value, unit) });
}

/** "± 0.5 g of the scale for meat" */
export function tellErrors({ temperature, mass, meat, pH, aw }: InstrumentErrors, say: SayLimits): string[] {
  return [
    ...(temperature ? [say('error-temperature', { error: figureOf(Math.abs(temperature.hundredths), 2, temperature.unit) })] : []),
    ...(mass ? [tellScale(mass, say)] : []),
    ...(meat ? [say('error-meat', { error: figureOf(meat.thousandths, 3, meat.unit) })] : []),
    ...(pH ? [say('error-ph', { error: figureOf(pH.thousandths, 3, 'ratio') })] : []),
    ...(aw ? [say('error-aw', { error: figureOf(aw.thousandths, 3, 'ratio') })] : []),
  ];
}

function tellScale({ thousandths, unit, step }: ScaleError & { step?: number }, say: SayLimits): string {
  const error = figureOf(thousandths, 3, unit);
  return step ? say('error-mass-step', { error, step: figureOf(step, 3, unit) }) : say('error-mass', { error });
}

/** "at the end of Cooking"; empty where no control point starts the clock. */
export function tellClockStart({ stage, answer }: ClockStart, say: SayLimits): string {
  if (stage && answer) return say('clock-at-both', { stage: stage.name, answer: answer.name });
  if (answer) return say('clock-at-answer', { answer: answer.name });
  return stage ? say('clock-at-end', { stage: stage.name }) : '';
}
