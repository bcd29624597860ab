import { beforeWeighing } from './before-weighing';
import type { CalculationForm } from './form';
import { fermentedAndDried } from './fermented-and-dried';
import { finishedProduct } from './finished-product';
import { instruments } from './instruments';
import { whileItCooks } from './while-it-cooks';

export const forms: readonly CalculationForm[] = [
  ...beforeWeighing, ...whileItCooks, ...fermentedAndDried, ...finishedProduct, ...instruments,
];

/** The headings of the page, in the order of a day. */
export const groups = [...new Set(forms.map(({ group }) => group))];
