import { beforeWeighing } from './before-weighing';
import type { CalculationForm } from './form';
import { finishedProduct } from './finished-product';
import { instruments } from './instruments';
import { whileItCooks } from './while-it-cooks';

export const forms: readonly CalculationForm[] = [...beforeWeighing, ...whileItCooks, ...finishedProduct, ...instruments];

/** The headings of the page, in the order of a day. */
export const groups = [...new Set(forms.map(({ group }) => group))];
