import { ofProduct, recordsMoment, type Lot } from '@larderbook/contracts';
import { massFromGrams, massIn, roundedMass, type Quantity, type Rounding, type Tell } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import type { NextThing } from './next-thing';

export type SaidNext = { title: string; detail?: string; action?: string };
type Units = 'US' | 'metric';

export function sayNext(next: NextThing, units: Units, say: SayOf<'lots'>, tell: Tell): SaidNext {
  switch (next.do) {
    case 'put in meat':
      return {
        title: next.target ? say('put-in-item', { item: next.target.itemName }) : say('put-in-the-meat'),
        detail: say('put-in-how'),
        action: say('put-in-meat'),
      };
    case 'weigh':
      return {
        title: say('weigh-item', { item: next.target.itemName }),
        detail: sayTarget(next.target, units, say),
        action: say('weigh'),
      };
    case 'record':
      return sayRecord(next.point, say, tell);
    case 'finish':
      return {
        title: say('has-reached', { point: next.point.controlPoint.name }),
        detail: say('finish-or-go-on'),
        action: say('it-is-finished'),
      };
    case 'settle':
      return { title: say('deal-with', { number: String(next.number) }), action: say('record-action') };
    case 'pack':
      return { title: say('pack-the-lot'), detail: say('all-recorded'), action: say('pack') };
    case 'review':
      return { title: say('review-first'), detail: say('review-by-whom'), action: say('to-the-review') };
    case 'ship':
      return { title: say('may-ship'), action: say('to-shipping') };
    case 'nothing':
      return { title: say('nothing-to-do') };
  }
}

type Target = Lot['targets'][number];

/** "Target 408.2 g · least 43.6 g, most 56.6 g", rounded so that no bound is passed. */
export function sayTarget(target: Target, units: Units, say: SayOf<'lots'>): string {
  const { targetGrams, weighedGrams, minGrams, maxGrams } = target;
  const inward = maxGrams !== undefined ? 'down' : minGrams !== undefined ? 'up' : 'nearest';
  const parts = [
    targetGrams !== undefined && say('target', { weight: massIn(units, targetGrams, inward) }),
    weighedGrams > 0 && say('weight-in', { weight: massIn(units, weighedGrams) }),
    sayBounds(target, say),
  ];
  return parts.filter(Boolean).join(' · ');
}

function sayBounds({ minGrams, maxGrams }: Target, say: SayOf<'lots'>): string {
  const least = minGrams === undefined ? undefined : inGrams(minGrams, 'up');
  const most = maxGrams === undefined ? undefined : inGrams(maxGrams, 'down');
  if (least) return most ? say('least-most', { least, most }) : say('least', { least });
  return most ? say('most', { most }) : '';
}

/** The bounds of a curing ingredient are read to the tenth of a gram. */
const inGrams = (grams: number, rounding: Rounding): Quantity => roundedMass(massFromGrams(grams.toFixed(9)), 'g', 1, rounding);

type Point = Extract<NextThing, { do: 'record' }>['point'];

function sayRecord(point: Point, say: SayOf<'lots'>, tell: Tell): SaidNext {
  const { name, takenAs, monitoring } = point.controlPoint;
  if (recordsMoment(point.controlPoint)) return { title: name, detail: monitoring.what, action: say('it-begins') };
  if (takenAs === 'attestation') return { title: name, detail: monitoring.what, action: say('answer') };
  if (takenAs !== 'curve' || ofProduct(point.controlPoint, point.readings).length === 0)
    return { title: name, detail: monitoring.what, action: say('record') };
  const running = mostPressing(point, tell);
  return { title: running ? say('to-be-reached', { point: name, bound: running.bound }) : name, action: say('next-reading') };
}

function mostPressing({ judged }: Point, tell: Tell) {
  const running = judged.flatMap(({ verdict, limit }) => tell(verdict, limit).running ?? []);
  return running.sort((a, b) => (a.deadline ?? Infinity) - (b.deadline ?? Infinity))[0];
}
