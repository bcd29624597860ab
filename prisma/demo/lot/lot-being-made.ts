import * as contract from '@larderbook/contracts';
import type { ControlPoint, InputOf } from '@larderbook/contracts';
import type { PlannedLot } from '../calendar';
import type { DemoProduct } from '../products/demo-product';
import { instantOf, minutesAfter, newId, type Story } from '../story';
import type { World } from '../world';

export const gramsInPound = 453.59237;
export const tenths = (value: number) => Math.round(value * 10) / 10;

export type Hands = { operator: string; reviewer: string };
export type Entered = InputOf<typeof contract.recordReading>['entered'];
type ReadingBy = { probe?: string; instrument?: string; station?: string; readingId?: string };

/** One lot of the story while its people make it: what it is, what it weighs, and the deviation it may have. */
export class LotBeingMade<Product extends DemoProduct = DemoProduct> {
  readonly lotId: string;
  readonly trimmedGrams: number;
  private deviationId?: string;

  constructor(
    readonly story: Story,
    readonly world: World,
    readonly plan: PlannedLot,
    readonly product: Product,
    readonly start: Date,
    readonly who: Hands,
  ) {
    this.lotId = newId(start);
    this.trimmedGrams = product.meat.reduce((sum, [, percent]) => sum + this.trimmedPounds(percent) * gramsInPound, 0);
  }

  /** The plan it is made by; known once the shop is furnished. */
  get controlPoints(): ControlPoint[] {
    return this.world.products[this.plan.product].plan.controlPoints;
  }

  takenPounds = (percent: number) => tenths((this.plan.meat * percent) / 100);
  trimmedPounds = (percent: number) => tenths(this.takenPounds(percent) * this.product.trimmedPart);
  /** What was condemned of it before it was packed. */
  condemnedGrams = 0;

  wentInGrams = () =>
    this.trimmedGrams * (1 + this.product.ingredients.reduce((sum, [, percent]) => sum + percent, 0) / 100);

  /** Something the operator records. */
  tell = <R extends contract.RouteShape>(at: Date, route: R) => this.story.tell(at, this.who.operator, route);

  /** A value or an answer at a control point; a limit it misses is noted. */
  read(point: ControlPoint, at: Date, entered: Entered, by: ReadingBy = {}): void {
    const { probe, instrument, station, readingId = newId(at) } = by;
    const instrumentId = instrument && this.world.instruments[instrument];
    this.story.tell(at, this.who.operator, contract.recordReading, station).with(
      (takenAt) => ({
        readingId, lotId: this.lotId, controlPointId: point.controlPointId, entered, probe, instrumentId, takenAt,
      }),
      this.noteDeviation,
    );
  }

  endStage(point: ControlPoint, at: Date): void {
    this.tell(at, contract.endStage).with(
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
}
