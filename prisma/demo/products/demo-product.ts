import type { PlanContent, productFields } from '@larderbook/contracts';
import type { z } from 'zod';
import type { Curve } from '../curves';
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
  /** Minutes from product into heat, °F at the core. */
  cook: Curve;
  chill: Curve;
  chillTooSlow: Curve;
};

/** Frozen, cured, fermented and dried: weeks. */
export type DriedProduct = Described & {
  /** Minutes from the blocks into the freezer, °F at the centre. */
  freeze: Curve;
  /** Minutes from the sausages into the chamber: °F of the chamber, and pH of a sausage. */
  chamber: Curve;
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
