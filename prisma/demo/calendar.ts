import type { ProductKey } from './products';

/** What goes differently in a lot. */
export type Mishap =
  | 'chilled too slowly'
  | 'chilled too slowly in part'
  | 'too much cure'
  | 'label not right'
  | 'corrected reading'
  | 'probe slipped out'
  | 'entered late';
export type PlannedLot = {
  daysAgo: number;
  product: ProductKey;
  /** Pounds of meat taken from the walk-in. */
  meat: number;
  mishap?: Mishap;
  /** Where the lot has got to; left out: packed, reviewed and shipped. */
  upTo?: 'chilling' | 'drying' | 'held' | 'packed' | 'cleared';
  shipTo?: ('market' | 'inn' | 'school')[];
};

/**
 * Two months of work. The last ones are still under way: one drying, one chilling, one on hold, one to review, one to
 * ship.
 */
export const calendar: PlannedLot[] = [
  { daysAgo: 58, product: 'sausage', meat: 42, shipTo: ['market', 'inn'] },
  { daysAgo: 56, product: 'stew', meat: 30, shipTo: ['school'] },
  { daysAgo: 54, product: 'roast', meat: 36, shipTo: ['inn'] },
  { daysAgo: 51, product: 'sausage', meat: 40, shipTo: ['market'] },
  { daysAgo: 49, product: 'stew', meat: 32, mishap: 'chilled too slowly' },
  { daysAgo: 48, product: 'drySausage', meat: 30, shipTo: ['market', 'inn'] },
  { daysAgo: 47, product: 'stew', meat: 30, shipTo: ['school', 'inn'] },
  { daysAgo: 44, product: 'roast', meat: 34, shipTo: ['market', 'inn'] },
  { daysAgo: 42, product: 'sausage', meat: 45, mishap: 'corrected reading', shipTo: ['market', 'school'] },
  { daysAgo: 40, product: 'stew', meat: 28, shipTo: ['school'] },
  { daysAgo: 37, product: 'sausage', meat: 40, mishap: 'too much cure', shipTo: ['market', 'inn'] },
  { daysAgo: 35, product: 'roast', meat: 38, shipTo: ['inn'] },
  { daysAgo: 34, product: 'pulledPork', meat: 28, shipTo: ['school', 'inn'] },
  { daysAgo: 33, product: 'stew', meat: 30, shipTo: ['school', 'market'] },
  { daysAgo: 30, product: 'sausage', meat: 44, shipTo: ['market', 'inn'] },
  { daysAgo: 28, product: 'roast', meat: 30, mishap: 'chilled too slowly in part', shipTo: ['inn'] },
  { daysAgo: 26, product: 'stew', meat: 34, shipTo: ['school'] },
  { daysAgo: 23, product: 'sausage', meat: 40, mishap: 'label not right', shipTo: ['market'] },
  { daysAgo: 21, product: 'roast', meat: 36, shipTo: ['inn', 'market'] },
  { daysAgo: 19, product: 'stew', meat: 30, shipTo: ['school'] },
  { daysAgo: 16, product: 'sausage', meat: 42, mishap: 'probe slipped out', shipTo: ['market', 'inn'] },
  { daysAgo: 14, product: 'stew', meat: 30, shipTo: ['school', 'inn'] },
  { daysAgo: 12, product: 'roast', meat: 34, shipTo: ['inn'] },
  { daysAgo: 11, product: 'drySausage', meat: 28, upTo: 'drying' },
  { daysAgo: 9, product: 'sausage', meat: 46, shipTo: ['market', 'school'] },
  { daysAgo: 8, product: 'pulledPork', meat: 30, shipTo: ['school'] },
  { daysAgo: 6, product: 'stew', meat: 30, mishap: 'entered late', shipTo: ['school'] },
  { daysAgo: 5, product: 'roast', meat: 32, upTo: 'cleared' },
  { daysAgo: 3, product: 'sausage', meat: 40, upTo: 'packed' },
  { daysAgo: 2, product: 'roast', meat: 30, mishap: 'chilled too slowly', upTo: 'held' },
  { daysAgo: 0, product: 'sausage', meat: 38, upTo: 'chilling' },
];
