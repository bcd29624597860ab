import { beforeWeighing } from './before-weighing';
import { curingAndPickles } from './curing-and-pickles';
import type { CalculatorForm } from './form';
import { fermentedAndDried } from './fermented-and-dried';
import { finishedProduct } from './finished-product';
import { instruments } from './instruments';
import { whileItCooks } from './while-it-cooks';
import { whileItCools } from './while-it-cools';

export const forms: readonly CalculatorForm[] = [
  ...beforeWeighing,
  ...curingAndPickles,
  ...whileItCooks,
  ...whileItCools,
  ...fermentedAndDried,
  ...finishedProduct,
  ...instruments,
];

export const groups = [...new Set(forms.map(({ group }) => group))];
