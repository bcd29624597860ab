import * as contract from '@larderbook/contracts';
import type { ControlPoint, InputOf } from '@larderbook/contracts';
import type { PlannedLot } from '../calendar';
import { Chance, inSteps } from '../chance';
import { isDried, type DemoProduct } from '../products/demo-product';
import { onDuty, reviewer, stations, type ItemKey } from '../shop';
import { instantOf, minutesAfter, newId, type Story } from '../story';
import type { World } from '../world';

export const gramsInPound = 453.59237;

export type Entered = InputOf<typeof contract.recordReading>['entered'];
type ReadingBy = { probe?: string; instrument?: string; station?: string; readingId?: string; sure?: true; taken?: Date };
type Meat = { item: ItemKey; taken: number; trimmed: number };

/** One lot of the story while its people make it: what it is, what it weighs, and the deviation it may have. */
export class LotBeingMade<Product extends DemoProduct = DemoProduct> {
  readonly lotId: string;
  readonly chance: Chance;
  /** Pounds as taken from the walk-in and as trimmed, by the floor scale. */
  readonly meat: Meat[];
  trimmedGrams: number;
  readonly reviewer = reviewer;
  /** All that has gone in so far, and what was condemned of it before it was packed. */
  wentInGrams = 0;
  condemnedGrams = 0;
  private deviationId?: string;

  constructor(
    readonly story: Story,
    readonly world: World,
    readonly plan: PlannedLot,
    readonly product: Product,
    readonly start: Date,
  ) {
    this.lotId = newId(start);
    this.chance = new Chance(placeOf(plan));
    this.meat = product.meat.map(([item, percent]) => this.overTheTable(item, percent));
    this.trimmedGrams = this.meat.reduce((sum, { trimmed }) => sum + trimmed * gramsInPound, 0);
  }

  /** What was taken is near what was planned; what is left after boning and trimming is never the same. */
  private overTheTable(item: ItemKey, percent: number): Meat {
    const taken = inSteps(((this.plan.meat * percent) / 100) * this.chance.between(0.985, 1.015, 0.001), 0.05);
    const left = this.product.trimmedPart + this.chance.between(-0.018, 0.018, 0.001);
    return { item, taken, trimmed: inSteps(taken * left, 0.05) };
  }

  /** The plan it is made by; known once the shop is furnished. */
  get controlPoints(): ControlPoint[] {
    return this.world.products[this.plan.product].plan.controlPoints;
  }

  /** Something that whoever is on duty records; `taken` when it is entered later than that. */
  tell = <R extends contract.RouteShape>(at: Date, route: R, where: { station?: string; taken?: Date } = {}) =>
    this.story.tell(at, onDuty(where.taken ?? at, this.ofTheKettle), route, { station: this.station, ...where });

  /** A value or an answer at a control point; a limit it misses is noted. */
  read(point: ControlPoint, at: Date, entered: Entered, by: ReadingBy = {}): void {
    const { probe, instrument, station, readingId = newId(at), sure, taken } = by;
    const instrumentId = instrument && this.world.instruments[instrument];
    this.tell(at, contract.recordReading, { ...(station && { station }), taken }).with(
      (takenAt) => ({
        readingId,
        lotId: this.lotId,
        controlPointId: point.controlPointId,
        entered,
        probe,
        instrumentId,
        sure,
        takenAt,
      }),
      this.noteDeviation,
    );
  }

  endStage(point: ControlPoint, at: Date, taken = at): void {
    this.tell(at, contract.endStage, { taken }).with(
      (takenAt) => ({ stageEndId: newId(at), lotId: this.lotId, controlPointId: point.controlPointId, takenAt }),
      this.noteDeviation,
    );
  }

  noteDeviation = ({ deviationId }: { deviationId?: string }): void => {
    this.deviationId = deviationId ?? this.deviationId;
  };

  /** The missed limit that the story tells about next. */
  deviation(): string {
    if (!this.deviationId) throw new Error(`The story expected a missed limit in the lot of ${instantOf(this.start)}`);
    return this.deviationId;
  }

  after = (minutes: number): Date => minutesAfter(this.start, minutes);

  private get ofTheKettle(): boolean {
    return !isDried(this.product) && this.product.fields.process === 'cook-chill';
  }

  private get station(): string {
    return this.ofTheKettle ? stations.kitchen : stations.smoker;
  }
}

/** Where a lot stands in the story: what differs in it is drawn from there. */
export const placeOf = ({ product, daysAgo }: PlannedLot): string => `${product}, ${daysAgo} days ago`;
