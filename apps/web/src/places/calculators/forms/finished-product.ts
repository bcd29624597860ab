import { calculateComposition, calculateListeria, calculateWaterInProduct } from '@larderbook/contracts';
import { wateredProducts } from '@larderbook/haccp';
import { choicesOf } from './choices-of';
import type { CalculatorForm } from './form';

const group = 'group-finished-product';

export const finishedProduct: readonly CalculatorForm[] = [
  {
    name: 'composition-by-analysis',
    group,
    route: calculateComposition,
    fields: [
      { kind: 'number', key: 'moisture', label: 'moisture', unit: '%', decimals: 3 },
      { kind: 'number', key: 'protein', label: 'protein', unit: '%', decimals: 3 },
      { kind: 'number', key: 'fat', label: 'fat', unit: '%', decimals: 3 },
      { kind: 'number', key: 'salt', label: 'salt', unit: '%', decimals: 3 },
      { kind: 'number', key: 'pH', label: 'analysed-ph', optional: true, decimals: 3 },
      { kind: 'number', key: 'aw', label: 'analysed-aw', optional: true, decimals: 3 },
    ],
  },
  {
    name: 'water-in-finished-product',
    group,
    route: calculateWaterInProduct,
    fields: [
      { kind: 'choice', key: 'product', label: 'product', choices: choicesOf('product', wateredProducts) },
      { kind: 'number', key: 'moisture', label: 'moisture', unit: '%', decimals: 3 },
      { kind: 'number', key: 'protein', label: 'protein', unit: '%', decimals: 3 },
      { kind: 'number', key: 'fat', label: 'fat', unit: '%', hint: 'counts-in-frankfurters', optional: true, decimals: 3 },
    ],
  },
  {
    name: 'listeria-in-the-pack',
    group,
    route: calculateListeria,
    fields: [
      { kind: 'number', key: 'waterPhaseSalt', label: 'salt-in-water', unit: '%', decimals: 3 },
      { kind: 'number', key: 'pH', label: 'analysed-ph', decimals: 3 },
      { kind: 'number', key: 'nitritePpm', label: 'nitrite-in-product', unit: 'ppm', optional: true, hint: 'as-sold' },
      { kind: 'number', key: 'phenolsPpm', label: 'smoke-phenols', unit: 'ppm', optional: true },
      { kind: 'number', key: 'lacticPpm', label: 'lactic-acid', unit: 'ppm', optional: true },
      { kind: 'number', key: 'aceticPpm', label: 'acetic-acid', unit: 'ppm', optional: true },
      { kind: 'number', key: 'celsius', label: 'kept-at', unit: '°C', belowZero: true },
      { kind: 'number', key: 'hours', label: 'for-so-long', unit: 'h' },
    ],
  },
];
