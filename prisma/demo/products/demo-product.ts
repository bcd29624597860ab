import type { PlanContent, productFields } from '@larderbook/contracts';
import type { z } from 'zod';
import type { Chill, Curve } from '../curves';
import type { ItemKey } from '../shop';

export type Share = [item: ItemKey, percent: number];

type Described = {
  fields: z.output<typeof productFields>;
  expectedYieldPercent: number;
  meat: Share[];
  ingredients: Share[];
  /** Part of the meat that is left after boning and trimming. */
  trimmedPart: number;
  package: { value: number; unit: 'lb' | 'oz' };
  /** What the shop writes into the plan that it starts from; left out: nothing. */
  addToPlan?: (plan: PlanContent) => PlanContent;
};

/** Heated, chilled and packed on one day. */
export type CookedProduct = Described & {
  /** Minutes from product into heat, °F at the core; the usual day. */
  cook: Curve;
  chill: Chill;
  /** The day on which the chiller failed; left out: there was none. */
  chillTooSlow?: Chill;
  /** A reading in every quarter of an hour, because of what its plan counts. */
  watchedClosely?: true;
};

/** Frozen, cured, fermented and dried: weeks. */
export type DriedProduct = Described & {
  /** °F at the centre of a block, every two hours from the blocks into the freezer. */
  freeze: number[];
  /** °F of the chamber, every two hours from the sausages into it; pH of a sausage by the minute. */
  chamber: number[];
  acid: [minute: number, pH: number][];
  /** Marked pieces, grams as they were hung. */
  pieces: { probe: string; grams: number }[];
  /** Per mille of the weight lost, day by day that they were weighed. */
  lost: [day: number, perMille: number][];
  /** Of the finished sausage. */
  analysed: Partial<Record<'aw' | 'ratio', number>>;
};

export type DemoProduct = CookedProduct | DriedProduct;
export const isDried = (product: DemoProduct): product is DriedProduct => 'chamber' in product;
