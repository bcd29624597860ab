import { ofProduct, recordsMoment, type Lot } from '@larderbook/contracts';
import type { Tell } from '@larderbook/haccp';
import { sayGrams, sayLeast, sayMost, type ShownUnits } from '../say/say-grams';
import type { NextThing } from './next-thing';

/** The next thing in words: what to do, the figures it needs, and what its button says. */
export type SaidNext = { title: string; detail?: string; action?: string };

export function sayNext(next: NextThing, units: ShownUnits, tell: Tell): SaidNext {
  switch (next.do) {
    case 'put in meat':
      return {
        title: next.target ? `Put in the ${lower(next.target.itemName)}` : 'Put in the meat',
        detail: 'Choose the delivery, weigh what is taken, then what is left after trimming.',
        action: 'Put in meat',
      };
    case 'weigh':
      return {
        title: `Weigh the ${lower(next.target.itemName)}`,
        detail: sayTarget(next.target, units),
        action: 'Weigh',
      };
    case 'record':
      return sayRecord(next.point, tell);
    case 'finish':
      return {
        title: `${next.point.controlPoint.name} has reached what it needs`,
        detail: 'Say that it is finished, or go on reading.',
        action: 'It is finished',
      };
    case 'settle':
      return {
        title: `Deal with deviation ${next.number}`,
        action: 'Record the corrective action',
      };
    case 'pack':
      return { title: 'Pack the lot', detail: 'Everything the plan asks for is recorded.', action: 'Pack' };
    case 'review':
      return {
        title: 'Review before it ships',
        detail: 'By somebody who made none of its records.',
        action: 'Go to the review',
      };
    case 'ship':
      return { title: 'Cleared: it may be shipped', action: 'Go to shipping' };
    case 'nothing':
      return { title: 'Nothing more to do on this lot' };
  }
}

type Target = Lot['targets'][number];

/** "Target 408.2 g · least 43.6 g, most 56.6 g": what stands beside the scale. */
export function sayTarget({ targetGrams, weighedGrams, minGrams, maxGrams }: Target, units: ShownUnits): string {
  const inward = maxGrams !== undefined ? 'down' : minGrams !== undefined ? 'up' : 'nearest';
  const bounds = [minGrams !== undefined && `least ${sayLeast(minGrams)}`, maxGrams !== undefined && `most ${sayMost(maxGrams)}`];
  const parts = [
    targetGrams !== undefined && `Target ${sayGrams(targetGrams, units, inward)}`,
    weighedGrams > 0 && `${sayGrams(weighedGrams, units)} is in`,
    bounds.filter(Boolean).join(', '),
  ];
  return parts.filter(Boolean).join(' · ');
}

type Point = Extract<NextThing, { do: 'record' }>['point'];

function sayRecord(point: Point, tell: Tell): SaidNext {
  const { name, takenAs, monitoring } = point.controlPoint;
  if (recordsMoment(point.controlPoint)) return { title: name, detail: monitoring.what, action: 'It begins' };
  if (takenAs === 'attestation') return { title: name, detail: monitoring.what, action: 'Answer' };
  if (takenAs !== 'curve' || ofProduct(point.controlPoint, point.readings).length === 0)
    return { title: name, detail: monitoring.what, action: 'Record' };
  const running = mostPressing(point, tell);
  return { title: running ? `${name}: ${running.bound} to be reached` : name, action: 'Next reading' };
}

/** Of what a point's running limits wait for, the bound that is due first. */
function mostPressing({ judged }: Point, tell: Tell) {
  const running = judged.flatMap(({ verdict, limit }) => tell(verdict, limit).running ?? []);
  return running.sort((a, b) => (a.deadline ?? Infinity) - (b.deadline ?? Infinity))[0];
}

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
