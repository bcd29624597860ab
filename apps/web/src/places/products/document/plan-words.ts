import type { ClockStart, ControlPoint, PlanContent } from '@larderbook/contracts';
import {
  decimalText,
  isStirred,
  type Frequency,
  type InstrumentErrors,
  type Piece,
  type Quantity,
  type ScaleError,
} from '@larderbook/haccp';
import type { Say, WordsOf } from '@larderbook/messages';

export type Step = PlanContent['steps'][number];
export type Hazard = Step['hazards'][number];
export type TakenAs = ControlPoint['takenAs'];
export type SayPlans = Say<WordsOf<'plans'>>;

/** "Air of the blast chiller, set to 34 °F by the shop’s own habit" */
export function surroundingsWords({ surroundings: around }: ControlPoint, say: SayPlans): string {
  if (!around?.setPoint) return around?.name ?? '';
  const { value, unit } = around.setPoint;
  return say('surroundings-set', { name: around.name, temperature: { value: String(value), unit } });
}

/** "at least every 30 min", "at least 3 times in a lot" */
export const frequencyWords = (frequency: Frequency, say: SayPlans): string =>
  'everyMinutes' in frequency
    ? say('frequency-every', { time: { value: String(frequency.everyMinutes * 60_000), unit: 'ms' } })
    : say('frequency-times', { times: frequency.timesInALot });

/** "cylinder, 22 mm at its thinnest" */
export function pieceWords(piece: Piece, say: SayPlans): string {
  if (isStirred(piece)) return say('piece-stirred');
  const { value, unit } = piece.smallest;
  return say(`piece-${piece.shape}`, { size: { value: String(value), unit } });
}

/** "± 0.5 g of the scale for meat", one for each instrument whose error is stated. */
export function errorWords({ temperature, mass, meat, pH, aw }: InstrumentErrors, say: SayPlans): string[] {
  return [
    ...(temperature ? [say('error-temperature', { error: figure(temperature.hundredths, 2, temperature.unit) })] : []),
    ...(mass ? [scaleWords(mass, say)] : []),
    ...(meat ? [say('error-meat', { error: figure(meat.thousandths, 3, meat.unit) })] : []),
    ...(pH ? [say('error-ph', { error: figure(pH.thousandths, 3, 'ratio') })] : []),
    ...(aw ? [say('error-aw', { error: figure(aw.thousandths, 3, 'ratio') })] : []),
  ];
}

function scaleWords({ thousandths, unit, step }: ScaleError & { step?: number }, say: SayPlans): string {
  const error = figure(thousandths, 3, unit);
  return step ? say('error-mass-step', { error, step: figure(step, 3, unit) }) : say('error-mass', { error });
}

/** What starts the clock of a series: "at the end of Cooking". */
export function clockWords({ stage, answer }: ClockStart, say: SayPlans): string {
  if (stage && answer) return say('clock-at-both', { stage: stage.name, answer: answer.name });
  if (answer) return say('clock-at-answer', { answer: answer.name });
  return stage ? say('clock-at-end', { stage: stage.name }) : '';
}

/** Between what a reading is not asked about, in both units: "−10 °F to 212.5 °F (−23.33 °C to 100.28 °C)". */
export function plausibleWords({ plausible }: ControlPoint, say: SayPlans): string {
  if (!plausible) return '';
  const [[least, most], [leastToo, mostToo]] = [plausible['°F'], plausible['°C']];
  return say('asked-range', {
    least: figure(least, 2, '°F'),
    most: figure(most, 2, '°F'),
    leastToo: figure(leastToo, 2, '°C'),
    mostToo: figure(mostToo, 2, '°C'),
  });
}

const figure = (count: number, decimals: number, unit: Quantity['unit']): Quantity => ({ value: decimalText(count, decimals), unit });

/** The control points that hang at a step. */
export const pointsAt = ({ controlPoints }: PlanContent, stepId: string): ControlPoint[] =>
  controlPoints.filter((point) => point.stepId === stepId);

export const stepName = ({ steps }: PlanContent, stepId: string): string => steps.find((step) => step.stepId === stepId)?.name ?? '–';
