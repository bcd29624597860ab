import * as contract from '@larderbook/contracts';
import type { ControlPoint } from '@larderbook/contracts';
import type { PlannedLot } from './calendar';
import type { Curve } from './curves';
import { products, type DemoProduct } from './products';
import { operator, owner, reviewer, type ItemKey } from './shop';
import { instantOf, minutesAfter, newId, type Story } from './story';
import { takeFrom, type World } from './world';

const gramsInPound = 453.59237;
const tenths = (value: number) => Math.round(value * 10) / 10;

type Told = { lotId: string; code: string; packingId: string; packed: number; coldAt: Date };
type Hands = { operator: string; reviewer: string; owner: string };

/** One lot from the walk-in to the packages, as its people would record it. Returns where it got to. */
export function liveALot(story: Story, world: World, plan: PlannedLot, start: Date, who: Partial<Hands> = {}): Told {
  return new LotTeller(story, world, plan, start, { operator: operatorOf(plan), reviewer, owner, ...who }).tell();
}

const operatorOf = ({ product }: PlannedLot) => (product === 'stew' ? 'demo-kitchen' : operator);

class LotTeller {
  private readonly lotId: string;
  private readonly product: DemoProduct;
  private readonly trimmedGrams: number;
  private deviationId?: string;

  constructor(
    private readonly story: Story,
    private readonly world: World,
    private readonly plan: PlannedLot,
    private readonly start: Date,
    private readonly who: Hands,
  ) {
    this.lotId = newId(start);
    this.product = products[plan.product];
    this.trimmedGrams = this.product.meat.reduce((sum, [, percent]) => sum + this.trimmedPounds(percent) * gramsInPound, 0);
  }

  tell(): Told {
    const { content } = { content: this.world.products[this.plan.product].plan };
    this.begin();
    this.weighIngredients();
    const curves = content.controlPoints.filter((point) => point.takenAs === 'curve');
    const isChill = (point: ControlPoint) => point.limits.some(({ limit }) => limit.kind === 'cooling');
    const outOfHeat = this.runCurves(curves.filter((point) => !isChill(point)), minutesAfter(this.start, 55), this.product.cook);
    const tooSlow = this.plan.mishap === 'chilled too slowly';
    const chilling = this.plan.upTo === 'chilling';
    const curve = tooSlow ? this.product.chillTooSlow : this.product.chill;
    const cold = this.runCurves(curves.filter(isChill), minutesAfter(outOfHeat, 8), chilling ? curve.slice(0, 6) : curve, !chilling);
    const told = { lotId: this.lotId, code: '', packingId: newId(cold), packed: 0, coldAt: cold };
    if (chilling) return told;
    if (tooSlow) return this.condemn(minutesAfter(cold, 20)) ?? told;

    this.answerTheRest(content.controlPoints.filter((point) => point.takenAs === 'value' || point.takenAs === 'attestation'), minutesAfter(cold, 15));
    const packed = this.pack(told.packingId, minutesAfter(cold, 45));
    if (this.plan.upTo !== 'packed') this.review(minutesAfter(cold, 70));
    return { ...told, packed };
  }

  private begin(): void {
    const { productId } = this.world.products[this.plan.product];
    this.tellAs(this.start, contract.startLot).with((takenAt) => ({ lotId: this.lotId, productId, note: '', takenAt }));
    this.product.meat.forEach(([item, percent], index) => {
      const at = minutesAfter(this.start, 4 + 7 * index);
      this.tellAs(at, contract.putIn).with((takenAt) => ({
        inputId: newId(at), lotId: this.lotId, receiptId: takeFrom(this.world, item, this.takenPounds(percent), at),
        weight: { value: this.takenPounds(percent), unit: 'lb' }, trimmed: { value: this.trimmedPounds(percent), unit: 'lb' }, takenAt,
      }));
    });
  }

  private weighIngredients(): void {
    this.product.ingredients.forEach(([item, percent], index) => {
      const tooMuch = this.plan.mishap === 'too much cure' && item === 'cure';
      const grams = tenths((this.trimmedGrams * percent) / 100) * (tooMuch ? 1.2 : 1);
      const at = minutesAfter(this.start, 22 + 3 * index);
      this.weigh(item, tenths(grams), at);
      if (tooMuch) this.bringBackUnder(minutesAfter(at, 1));
    });
  }

  private weigh(item: ItemKey, grams: number, at: Date): void {
    this.story.tell(at, this.who.operator, contract.weighIn).with((takenAt) => ({
      weighingId: newId(at), lotId: this.lotId, itemId: this.world.items[item], receiptId: takeFrom(this.world, item, 0, at),
      weight: { value: grams, unit: 'g' }, instrumentId: this.world.instruments.scale, takenAt,
    }), (reply) => this.noteDeviation(reply.deviationId));
  }

  /** Cure was weighed by last week's slip: more meat goes in until the concentration is within its limit again. */
  private bringBackUnder(at: Date): void {
    const [item] = this.product.meat[0] ?? ['shoulder'];
    const more = tenths(this.plan.meat * 0.24);
    this.tellAs(at, contract.putIn).with((takenAt) => ({
      inputId: newId(at), lotId: this.lotId, receiptId: takeFrom(this.world, item as ItemKey, more, at),
      weight: { value: more, unit: 'lb' }, trimmed: { value: tenths(more * 0.96), unit: 'lb' }, takenAt,
    }));
    this.settle(minutesAfter(at, 5), 'release', {
      cause: 'The slip of a larger lot hung at the scale and the cure was weighed from it. The slip was taken away.',
      control: 'Trimmed meat was added before mixing; the concentration was worked out again and lies within its limit.',
      prevention: 'Targets are read from this record at the scale; paper slips are no longer used.',
      product: 'Nothing had left the mixing table. The lot was held until the concentration was shown to be within its limit.',
    }, 'Recomputed on the larger meat block after the addition.');
  }

  /** Reads one curve at every curve control point given; the moment the last reading was taken. */
  private runCurves(points: ControlPoint[], begin: Date, curve: Curve, ended = true): Date {
    const end = minutesAfter(begin, curve.at(-1)?.[0] ?? 0);
    for (const point of points) {
      this.readAround(point, minutesAfter(begin, 2));
      for (const [index, [minute, fahrenheit]] of curve.entries()) {
        const at = minutesAfter(begin, minute);
        const slip = this.plan.mishap === 'corrected reading' && index === 9;
        const readingId = newId(at);
        this.read(point, at, readingId, slip ? fahrenheit - 27 : fahrenheit);
        if (slip) this.correct(point, minutesAfter(at, 2), at, readingId, fahrenheit);
      }
      if (!ended) continue;
      const at = minutesAfter(end, 1);
      this.story.tell(at, this.who.operator, contract.endStage).with((takenAt) => ({ stageEndId: newId(at), lotId: this.lotId, controlPointId: point.controlPointId, takenAt }),
        (reply) => this.noteDeviation(reply.deviationId));
    }
    return minutesAfter(end, 1);
  }

  private read(point: ControlPoint, at: Date, readingId: string, fahrenheit: number): void {
    this.story.tell(at, this.who.operator, contract.recordReading).with((takenAt) => ({
      readingId, lotId: this.lotId, controlPointId: point.controlPointId, entered: { value: tenths(fahrenheit), unit: '°F' },
      probe: point.probes[0], instrumentId: this.world.instruments.probe, takenAt,
    }), (reply) => this.noteDeviation(reply.deviationId));
  }

  /** The air of a chiller is read once, as the door is shut. */
  private readAround({ controlPointId, surroundings }: ControlPoint, at: Date): void {
    if (!surroundings?.setPoint) return;
    this.tellAs(at, contract.recordReading).with((takenAt) => ({
      readingId: newId(at), lotId: this.lotId, controlPointId, entered: { value: 33.5, unit: '°F' }, probe: surroundings.name,
      instrumentId: this.world.instruments.probe, takenAt,
    }));
  }

  private correct(point: ControlPoint, at: Date, readAt: Date, amends: string, fahrenheit: number): void {
    this.tellAs(at, contract.recordReading).with((_now) => ({
      readingId: newId(at), lotId: this.lotId, controlPointId: point.controlPointId, entered: { value: fahrenheit, unit: '°F' }, probe: point.probes[0],
      instrumentId: this.world.instruments.probe, takenAt: instantOf(readAt), amends, reason: 'Two digits typed the wrong way round; the display still showed the value.',
    }));
  }

  private answerTheRest(points: ControlPoint[], at: Date): void {
    for (const point of points) {
      const answer = (when: Date, answered: boolean, seen: string) =>
        this.story.tell(when, this.who.operator, contract.recordReading).with((takenAt) => ({
          readingId: newId(when), lotId: this.lotId, controlPointId: point.controlPointId, takenAt,
          entered: point.takenAs === 'attestation' ? { answer: answered, seen } : valueFor(point),
          instrumentId: point.takenAs === 'attestation' ? undefined : this.world.instruments.probe,
        }), (reply) => this.noteDeviation(reply.deviationId));
      const wrongLabel = this.plan.mishap === 'label not right' && point.takenAs === 'attestation';
      if (wrongLabel) {
        answer(at, false, 'The roll on the labeller was that of the stew.');
        this.settle(minutesAfter(at, 4), 'release', {
          cause: 'The label roll was not changed after the last product. It was taken off.',
          control: 'The right roll was put on and the first ten labels compared with the approved label.',
          prevention: 'The roll is taken off the labeller at the end of every run.',
          product: 'Eleven packages were opened and relabelled; all labels were counted.',
        }, 'Every package of the run was looked at again.');
      }
      answer(minutesAfter(at, wrongLabel ? 12 : 0), true, seenAt(point));
    }
  }

  private pack(packingId: string, at: Date): number {
    const { package: net, expectedYieldPercent } = this.product;
    const everything = this.wentInGrams();
    const netGrams = net.value * (net.unit === 'lb' ? gramsInPound : gramsInPound / 16);
    const count = Math.floor((everything * expectedYieldPercent) / 100 / netGrams);
    this.tellAs(at, contract.packLot).with((takenAt) => ({ packingId, lotId: this.lotId, count, net, takenAt }));
    const after = minutesAfter(at, 10);
    this.tellAs(after, contract.recordRemoval).with((takenAt) => ({
      removalId: newId(after), lotId: this.lotId, kind: 'loss in cooking', note: 'Weight in less weight packed, weighed on the floor scale.',
      weight: { value: Math.floor(((everything - count * netGrams) / gramsInPound) * 10) / 10, unit: 'lb' }, takenAt,
    }));
    return count;
  }

  private review(at: Date): void {
    this.story.tell(at, this.who.reviewer, contract.signReview).with(() => ({
      reviewId: newId(at), lotId: this.lotId, statement: 'Records complete; limits met or corrected; the lot may be shipped.',
    }));
  }

  private condemn(at: Date): undefined {
    if (this.plan.upTo === 'held') return undefined;
    this.settle(at, 'condemn', {
      cause: 'The fan of the chiller had iced up and the trays stood too close. The coil was defrosted.',
      control: 'The empty chiller was brought down to 30 °F and the next lot was followed with readings every ten minutes.',
      prevention: 'The coil is looked at each morning; trays stand a hand apart, one layer deep.',
      product: 'The whole lot was tagged, kept apart in the walk-in and then condemned; none was packed.',
    }, 'Cooling stage missed; growth could not be ruled out.');
    return undefined;
  }

  private settle(at: Date, decision: 'release' | 'condemn', parts: { cause: string; control: string; prevention: string; product: string }, basis: string): void {
    const weight = { value: Math.floor((this.wentInGrams() / gramsInPound) * 100) / 100, unit: 'lb' as const };
    this.tellAs(at, contract.recordCorrectiveAction).with((takenAt) => ({ actionId: newId(at), deviationId: this.deviation(), ...parts, takenAt }));
    this.story.tell(minutesAfter(at, 1), this.who.reviewer, contract.recordDisposition).with(() => ({ dispositionId: newId(at), deviationId: this.deviation(), decision, weight, basis }));
    this.story.tell(minutesAfter(at, 2), this.who.reviewer, contract.closeDeviation).with(() => ({ closingId: newId(at), deviationId: this.deviation(), note: '' }));
  }

  private deviation(): string {
    if (!this.deviationId) throw new Error(`The story expected a missed limit in the lot of ${instantOf(this.start)}`);
    return this.deviationId;
  }

  private noteDeviation(deviationId: string | undefined): void {
    this.deviationId = deviationId ?? this.deviationId;
  }

  private tellAs = <R extends contract.RouteShape>(at: Date, route: R) => this.story.tell(at, this.who.operator, route);

  private wentInGrams = () => this.trimmedGrams * (1 + this.product.ingredients.reduce((sum, [, percent]) => sum + percent, 0) / 100);
  private takenPounds = (percent: number) => tenths((this.plan.meat * percent) / 100);
  private trimmedPounds = (percent: number) => tenths(this.takenPounds(percent) * this.product.trimmedPart);
}

/** What was looked at to answer with yes. */
const seenAt = ({ name }: ControlPoint): string =>
  /humidity/i.test(name) ? 'Dampers shut for the first hour and a half, steam on twice; times on the oven card.' : 'Compared with the approved label.';

/** A value that lies well within the first limit of a control point read as one value. */
function valueFor({ limits }: ControlPoint): { value: number; unit: '°F' | 'pH' | 'aw' | '%' } {
  const limit = limits[0]?.limit;
  if (limit?.kind !== 'range' || limit.measured === 'temperature') return { value: 36.4, unit: '°F' };
  const bound = limit.max ?? limit.min;
  const value = typeof bound === 'number' ? bound / 1000 : 1;
  return { value, unit: limit.measured === 'percent' ? '%' : limit.measured };
}
