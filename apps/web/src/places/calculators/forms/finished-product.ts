import { calculateComposition, calculateListeria, calculateWaterInProduct } from '@larderbook/contracts';
import { wateredProducts } from '@larderbook/haccp';
import { choicesOf } from './choices-of';
import type { CalculatorForm } from './form';

const group = 'The finished product';

export const finishedProduct: readonly CalculatorForm[] = [
  {
    name: 'composition-by-analysis',
    group,
    title: 'Composition by analysis',
    about: 'Added water, moisture to protein, salt in the water phase, and how it keeps.',
    route: calculateComposition,
    fields: [
      { kind: 'number', key: 'moisture', label: 'Moisture', unit: '%', decimals: 3 },
      { kind: 'number', key: 'protein', label: 'Protein', unit: '%', decimals: 3 },
      { kind: 'number', key: 'fat', label: 'Fat', unit: '%', decimals: 3 },
      { kind: 'number', key: 'salt', label: 'Salt', unit: '%', decimals: 3 },
      { kind: 'number', key: 'pH', label: 'pH', optional: true, decimals: 3 },
      { kind: 'number', key: 'aw', label: 'Water activity', optional: true, decimals: 3 },
    ],
  },
  {
    name: 'water-in-finished-product',
    group,
    title: 'Water in a finished product',
    about: 'Added water, or moisture to protein, against the standard: what this protein allows.',
    route: calculateWaterInProduct,
    fields: [
      { kind: 'choice', key: 'product', label: 'Product', choices: choicesOf(wateredProducts) },
      { kind: 'number', key: 'moisture', label: 'Moisture', unit: '%', decimals: 3 },
      { kind: 'number', key: 'protein', label: 'Protein', unit: '%', decimals: 3 },
      { kind: 'number', key: 'fat', label: 'Fat', unit: '%', hint: 'Counts in frankfurters and bologna.', optional: true, decimals: 3 },
    ],
  },
  {
    name: 'listeria-in-the-pack',
    group,
    title: 'Listeria in a chilled pack',
    about: 'What it may do in storage, refused outside what the model covers. No shelf life follows from it.',
    route: calculateListeria,
    fields: [
      { kind: 'number', key: 'waterPhaseSalt', label: 'Salt in the water phase', unit: '%', decimals: 3 },
      { kind: 'number', key: 'pH', label: 'pH', decimals: 3 },
      { kind: 'number', key: 'nitritePpm', label: 'Nitrite in the product', unit: 'ppm', optional: true, hint: 'As sold, not ingoing.' },
      { kind: 'number', key: 'phenolsPpm', label: 'Smoke phenols', unit: 'ppm', optional: true },
      { kind: 'number', key: 'lacticPpm', label: 'Lactic acid in the water phase', unit: 'ppm', optional: true },
      { kind: 'number', key: 'aceticPpm', label: 'Acetic acid in the water phase', unit: 'ppm', optional: true },
      { kind: 'number', key: 'celsius', label: 'Kept at', unit: '°C', belowZero: true },
      { kind: 'number', key: 'hours', label: 'For', unit: 'h' },
    ],
  },
];
