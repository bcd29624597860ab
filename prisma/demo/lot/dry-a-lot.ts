import type { ControlPoint } from '@larderbook/contracts';
import { isOfKind } from '@larderbook/haccp';
import { inSteps } from '../chance';
import { everyTwoHours, type Curve } from '../curves';
import type { DriedProduct } from '../products/demo-product';
import { minutesAfter, newId } from '../story';
import type { Told } from './cook-a-lot';
import type { Entered, LotBeingMade } from './lot-being-made';
import { measureAndAnswer } from './measure-and-answer';
import { pack, review, weighWhole } from './pack';
import { putInMeat } from './put-in-meat';
import { weighIngredients } from './weigh-ingredients';

const day = 24 * 60;
/** Day by day: into the freezer on the first, thawed on the third, cured and hung on the fourth, dried from the sixth. */
const cured = 3 * day;
const hung = cured + 2 * 60;
const drying = hung + 2 * day + 2 * 60;

/** Five weeks: frozen, cured, fermented, dried, measured, packed and reviewed, as far as the calendar goes. */
export function dryALot(lot: LotBeingMade<DriedProduct>): Told {
  putInMeat(lot);
  freeze(lot, lot.after(70));
  weighIngredients(lot, lot.after(cured));
  ferment(lot, lot.after(hung));
  const isDrying = lot.plan.upTo === 'drying';
  const dry = dryPieces(lot, lot.after(drying), isDrying ? lot.plan.daysAgo - drying / day : Infinity);

  const told: Told = { lotId: lot.lotId, packingId: newId(dry), packed: 0, readyAt: dry };
  if (isDrying) return told;
  const weighed = weighWhole(lot, minutesAfter(dry, 22), 'loss in drying');
  const looked = measureAndAnswer(lot, minutesAfter(dry, 41), (point) => analysed(lot, point));
  const packed = pack(lot, told.packingId, weighed, minutesAfter(looked, 48));
  review(lot, minutesAfter(looked, 107));
  return { ...told, packed, readyAt: minutesAfter(looked, 120) };
}

function freeze(lot: LotBeingMade<DriedProduct>, begin: Date): void {
  const point = judgedBy(lot, 'freezing');
  logged(lot, point, begin, everyTwoHours(lot.product.freeze, lot.chance), 'freezer logger');
  lot.endStage(point, minutesAfter(begin, 2 * day - 60));
}

/** The chamber is read by its logger, day and night; pH by whoever is there in the day. */
function ferment(lot: LotBeingMade<DriedProduct>, begin: Date): void {
  const point = judgedBy(lot, 'degreeHours');
  const start = lot.controlPoints.find(({ controlPointId }) => controlPointId === point.follows);
  if (start) lot.read(start, begin, { answer: true, seen: '' });
  const [chamber, sausage] = point.probes;
  logged(lot, { ...point, probes: chamber ? [chamber] : [] }, begin, everyTwoHours(lot.product.chamber, lot.chance), 'chamber logger');
  for (const [minute, value] of lot.product.acid) {
    const shown = inSteps(value + lot.chance.between(-0.02, 0.01, 0.01), 0.01);
    lot.read(
      point,
      minutesAfter(begin, minute + lot.chance.between(4, 13)),
      { value: shown, unit: 'pH' },
      { probe: sausage, instrument: 'pH' },
    );
  }
  lot.endStage(point, minutesAfter(begin, (lot.product.acid.at(-1)?.[0] ?? 0) + 16));
}

/** Values sent by a logger stand under its own name as the place they came from. */
function logged(lot: LotBeingMade, point: ControlPoint, begin: Date, curve: Curve, station: string): void {
  for (const [minute, value] of curve) {
    const entered: Entered = { value, unit: '°F' };
    lot.read(point, minutesAfter(begin, minute), entered, { probe: point.probes[0], instrument: 'logger', station });
  }
}

/** Each marked piece on the bench scale, on the days that have passed; the moment after the last weighing. */
function dryPieces(lot: LotBeingMade<DriedProduct>, begin: Date, daysPassed: number): Date {
  const point = judgedBy(lot, 'weightLoss');
  const weighed = lot.product.lost.filter(([afterDays]) => afterDays < daysPassed);
  for (const [afterDays, perMille] of weighed) {
    const came = afterDays && lot.chance.between(-70, 95);
    lot.product.pieces.forEach(({ probe, grams }, index) => {
      const lost = perMille && perMille + lot.chance.between(-5, 5) - 4 * index;
      const hung = grams + (lot.trimmedGrams % 40);
      const at = minutesAfter(begin, afterDays * day + came + 3 * index);
      const value = inSteps((hung * (1000 - lost)) / 1000, 0.1);
      lot.read(point, at, { value, unit: 'g' }, { probe, instrument: 'scale' });
    });
  }
  const last = minutesAfter(begin, (weighed.at(-1)?.[0] ?? 0) * day + 110);
  if (daysPassed === Infinity) lot.endStage(point, last);
  return last;
}

/** Water activity is never twice quite the same; the laboratory sends one figure. */
function analysed({ product, chance }: LotBeingMade<DriedProduct>, { name, limits }: ControlPoint) {
  const unit = limits.some(({ limit }) => isOfKind(limit, 'figure')) ? 'ratio' : 'aw';
  const value = product.analysed[unit];
  if (value === undefined) throw new Error(`The story has no figure for ${name}`);
  return { value: unit === 'aw' ? inSteps(value + chance.between(-0.003, 0.002, 0.001), 0.001) : value, unit } as const;
}

function judgedBy(lot: LotBeingMade, kind: string): ControlPoint {
  const point = lot.controlPoints.find(({ limits }) => limits.some(({ limit }) => limit.kind === kind));
  if (!point) throw new Error(`The plan of the lot has no limit of the kind ${kind}`);
  return point;
}
