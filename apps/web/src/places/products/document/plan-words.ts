import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { decimalText, type Quantity } from '@larderbook/haccp';
import type { Say, WordsOf } from '@larderbook/messages';

export type Step = PlanContent['steps'][number];
export type Hazard = Step['hazards'][number];
export type TakenAs = ControlPoint['takenAs'];
export type SayPlans = Say<WordsOf<'plans'>>;

/** "Air of the blast chiller, set to 34 °F by the shop’s own habit". */
export function surroundingsWords({ surroundings: around }: ControlPoint, say: SayPlans): string {
  if (!around?.setPoint) return around?.name ?? '';
  const { value, unit } = around.setPoint;
  return say('surroundings-set', { name: around.name, temperature: { value: String(value), unit } });
}

/** A reading within it is not asked about: "−10 °F to 212.5 °F (−23.33 °C to 100.28 °C)". */
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

export const pointsAt = ({ controlPoints }: PlanContent, stepId: string): ControlPoint[] =>
  controlPoints.filter((point) => point.stepId === stepId);

export const stepName = ({ steps }: PlanContent, stepId: string): string => steps.find((step) => step.stepId === stepId)?.name ?? '–';
