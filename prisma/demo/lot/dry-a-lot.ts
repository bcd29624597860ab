import type { ControlPoint } from '@larderbook/contracts';
import type { Curve } from '../curves';
import type { DriedProduct } from '../products/demo-product';
import { minutesAfter, newId } from '../story';
import type { Told } from './cook-a-lot';
import { tenths, type Entered, type LotBeingMade } from './lot-being-made';
import { measureAndAnswer } from './measure-and-answer';
import { pack, review } from './pack';
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
  measureAndAnswer(lot, minutesAfter(dry, 40), (point) => analysed(lot, point));
  const packed = pack(lot, told.packingId, minutesAfter(dry, 90), 'loss in drying');
  review(lot, minutesAfter(dry, 150));
  return { ...told, packed };
}

function freeze(lot: LotBeingMade<DriedProduct>, begin: Date): void {
  const point = judgedBy(lot, 'freezing');
  logged(lot, point, begin, lot.product.freeze, 'freezer logger');
  lot.endStage(point, minutesAfter(begin, 2 * day - 60));
}

/** The chamber is read by its logger, day and night; pH by whoever is there in the day. */
function ferment(lot: LotBeingMade<DriedProduct>, begin: Date): void {
  const point = judgedBy(lot, 'degreeHours');
  const start = lot.controlPoints.find(({ controlPointId }) => controlPointId === point.follows);
  if (start) lot.read(start, begin, { answer: true, seen: '' });
  const [chamber, sausage] = point.probes;
  logged(lot, { ...point, probes: chamber ? [chamber] : [] }, begin, lot.product.chamber, 'chamber logger');
  for (const [minute, value] of lot.product.acid) {
    lot.read(point, minutesAfter(begin, minute + 5), { value, unit: 'pH' }, { probe: sausage, instrument: 'pH' });
  }
  lot.endStage(point, minutesAfter(begin, (lot.product.acid.at(-1)?.[0] ?? 0) + 10));
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
    lot.product.pieces.forEach(({ probe, grams }, index) => {
      const value = tenths((grams * (1000 - perMille - 4 * index * Math.sign(perMille))) / 1000);
      const at = minutesAfter(begin, afterDays * day + 3 * index);
      lot.read(point, at, { value, unit: 'g' }, { probe, instrument: 'scale' });
    });
  }
  const last = minutesAfter(begin, (weighed.at(-1)?.[0] ?? 0) * day + 10);
  if (daysPassed === Infinity) lot.endStage(point, last);
  return last;
}

function analysed({ product }: LotBeingMade<DriedProduct>, { name, limits }: ControlPoint) {
  const unit = limits.some(({ limit }) => limit.kind === 'figure') ? 'ratio' : 'aw';
  const value = product.analysed[unit];
  if (value === undefined) throw new Error(`The story has no figure for ${name}`);
  return { value, unit } as const;
}

function judgedBy(lot: LotBeingMade, kind: string): ControlPoint {
  const point = lot.controlPoints.find(({ limits }) => limits.some(({ limit }) => limit.kind === kind));
  if (!point) throw new Error(`The plan of the lot has no limit of the kind ${kind}`);
  return point;
}
