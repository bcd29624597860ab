import type { Lot } from '@larderbook/contracts';
import type { lotInput, reading, target, weighing } from '@larderbook/contracts';
import type { z } from 'zod';
import { ids } from './ids';

export const zone = 'America/Chicago';

/** An instant of the day of these lots by the shop's clock: `at('07:42')`. March 5, 2026, CST. */
export const at = (wall: string) => `2026-03-05T${wall}:00-06:00`;
export const ms = (wall: string) => Date.parse(at(wall));

export const by = (wall: string, name = 'Ada Brook') => ({
  personId: ids.of(name),
  name,
  at: at(wall),
  recordedAt: at(wall),
  station: 'Smokehouse tablet',
});
const grams = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
export const weight = (value: number, unit: keyof typeof grams) => ({ value, unit, grams: value * grams[unit] });

type Input = z.output<typeof lotInput>;
export const anInput = (wall: string, parts: Partial<Input> = {}): Input => ({
  inputId: ids.of(`input ${wall}`),
  weight: weight(52, 'lb'),
  trimmed: weight(50, 'lb'),
  flags: [],
  made: by(wall),
  reason: '',
  from: {
    receiptId: ids.of('receipt R-0007'),
    code: 'R-0007',
    what: 'Pork shoulder',
    supplier: 'Fernhill Farm',
    supplierLot: 'FH-2211',
  },
  ...parts,
});

type Weighing = z.output<typeof weighing>;
export const aWeighing = (wall: string, parts: Partial<Weighing> = {}): Weighing => ({
  weighingId: ids.of(`weighing ${wall}`),
  item: { itemId: ids.of('Salt'), name: 'Salt' },
  weight: weight(400, 'g'),
  targetGrams: 408.23,
  judged: [],
  receipt: { receiptId: ids.of('receipt R-0003'), code: 'R-0003', supplierLot: 'S-88' },
  flags: [],
  made: by(wall),
  reason: '',
  ...parts,
});

type Reading = z.output<typeof reading>;
export const aReading = (wall: string, value: number, parts: Partial<Reading> = {}): Reading => ({
  readingId: ids.of(`reading ${wall} ${value}`),
  controlPointId: ids.of('Cook'),
  probe: '',
  entered: { value, unit: '°F' },
  judged: [],
  instrument: { instrumentId: ids.of('Probe A'), name: 'Probe A' },
  flags: [],
  made: by(wall),
  reason: '',
  ...parts,
});

type Target = z.output<typeof target>;
export const aTarget = (itemName: string, parts: Partial<Target> = {}): Target => ({
  itemId: ids.of(itemName),
  itemName,
  part: 'ingredient',
  percent: 1.8,
  targetGrams: 408.23,
  weighedGrams: 0,
  ...parts,
});

/** A lot that was just started; say only what matters. */
export const aLot = (parts: Partial<Lot> = {}): Lot => ({
  lotId: ids.of('lot'),
  code: '26064-1',
  productId: ids.of('product'),
  productName: 'Smoked ring sausage',
  standing: 'in-work',
  because: [{ code: 'next-put-in-meat' }],
  startedAt: at('07:05'),
  openDeviations: 0,
  judgedOtherwise: [],
  packages: 0,
  packagesLeft: 0,
  note: '',
  flags: [],
  made: by('07:05'),
  formula: { formulaId: ids.of('formula'), version: 3, expectedYieldPercent: 88 },
  plan: { planId: ids.of('plan'), version: 2, title: 'Cured smoked cooked sausage' },
  useByDays: 28,
  storage: 'Keep at or below 40 °F',
  meatBlockGrams: 0,
  inputs: [],
  targets: [],
  weighings: [],
  controlPoints: [],
  removals: [],
  packings: [],
  deviations: [],
  corrections: [],
  reviews: [],
  shipments: [],
  ...parts,
});
