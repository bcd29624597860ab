import type { allergens, EstablishmentFields, Role, substances } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';

/**
 * Thistlewick Larder: an invented shop with a smokehouse, a kettle and a blast chiller. Nothing in it exists. It lies in
 * the time zone of whoever looks, so that its work is done at their hours.
 */
export const establishment: EstablishmentFields = {
  name: 'Thistlewick Larder',
  number: '00417-D',
  address: '3 Kiln Lane, Thistlewick (an invented place)',
  timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  units: 'US',
  paper: 'Letter',
  lotCodePattern: '{product}-{YY}{DDD}-{n}',
  jurisdiction: 'US, inspected establishment',
};

export const demoPassword = 'look-round-2026';

export const people: { userName: string; name: string; roles: Role[] }[] = [
  { userName: 'demo-owner', name: 'Mara Quill', roles: ['owner'] },
  { userName: 'demo-operator', name: 'Ivo Tarn', roles: ['operator'] },
  { userName: 'demo-kitchen', name: 'Nell Varrow', roles: ['operator'] },
  { userName: 'demo-reviewer', name: 'Petra Sedge', roles: ['reviewer'] },
  { userName: 'demo-inspector', name: 'Inspector on duty', roles: ['inspector'] },
];
export const owner = 'demo-owner';
export const reviewer = 'demo-reviewer';
export const operator = 'demo-operator';
const kitchen = 'demo-kitchen';

/** Early shift until one o'clock, then the late one: Ivo begins at the smokehouse, Nell at the kettle. By their clock. */
export function onDuty(at: Date, atTheKettle = false): string {
  const early = at.getHours() < 13;
  return early === atTheKettle ? kitchen : operator;
}

export const stations = { smoker: 'tablet by the smoker', kitchen: 'tablet in the kitchen', door: 'tablet at the back door' };

export const suppliers = {
  holt: {
    name: 'Hollow Holt Meats',
    establishmentNumber: '00981-X',
    address: '18 Drover Road, Hollow Holt',
    contact: 'orders desk, extension 4',
  },
  fernside: { name: 'Fernside Beef Yard', establishmentNumber: '01177-X', address: '2 Fern Bank, Nether Fernside', contact: 'yard office' },
  spice: { name: 'Dunmarrow Spice & Salt', address: '77 Mill Row, Dunmarrow', contact: 'counter' },
};

type Item = {
  name: string;
  kind: 'meat' | 'ingredient' | 'packaging';
  species?: 'pork' | 'beef';
  substance?: (typeof substances)[number];
  fractionPercent?: number;
  allergens?: (typeof allergens)[number][];
  from: keyof typeof suppliers;
};
const items = {
  shoulder: { name: 'Pork shoulder, bone in', kind: 'meat', species: 'pork', from: 'holt' },
  belly: { name: 'Pork belly trim', kind: 'meat', species: 'pork', from: 'holt' },
  chuck: { name: 'Beef chuck', kind: 'meat', species: 'beef', from: 'fernside' },
  round: { name: 'Beef top round', kind: 'meat', species: 'beef', from: 'fernside' },
  salt: { name: 'Salt', kind: 'ingredient', from: 'spice' },
  cure: { name: 'Curing salt 6.25 %', kind: 'ingredient', substance: 'sodium nitrite', fractionPercent: 6.25, from: 'spice' },
  erythorbate: { name: 'Sodium erythorbate', kind: 'ingredient', substance: 'sodium erythorbate', fractionPercent: 100, from: 'spice' },
  pepper: { name: 'Black pepper, cracked', kind: 'ingredient', from: 'spice' },
  garlic: { name: 'Garlic powder', kind: 'ingredient', from: 'spice' },
  paprika: { name: 'Smoked paprika', kind: 'ingredient', from: 'spice' },
  barley: { name: 'Pearl barley', kind: 'ingredient', from: 'spice' },
  roots: { name: 'Carrot and onion, diced, frozen', kind: 'ingredient', from: 'spice' },
  dextrose: { name: 'Dextrose', kind: 'ingredient', from: 'spice' },
  culture: { name: 'Starter culture for dry sausage', kind: 'ingredient', from: 'spice' },
  flour: { name: 'Wheat flour', kind: 'ingredient', allergens: ['wheat'], from: 'spice' },
} satisfies Record<string, Item>;
export type ItemKey = keyof typeof items;
export const demoItems: Record<ItemKey, Item> = items;

export const receivingLimitOf = (item: Item) => (item.kind === 'meat' ? receivedChilled : undefined);

export const customers = {
  market: { name: 'Saltmarsh Market Hall', address: 'Stall 9, Saltmarsh', contact: 'stall keeper' },
  inn: { name: 'The Lantern at Upper Thistlewick', address: '1 Lantern Lane', contact: 'kitchen' },
  school: { name: 'Brackenfold School Kitchen', address: '40 Brackenfold Way', contact: 'head cook' },
};

export const instruments = [
  { key: 'probe', name: 'Probe thermometer 1', kind: 'thermometer', unit: '°F', tolerance: 2, checkEveryDays: 7 },
  { key: 'scale', name: 'Bench scale, 0.1 g', kind: 'scale', unit: 'g', tolerance: 0.2, checkEveryDays: 30 },
  { key: 'floorScale', name: 'Floor scale, 0.05 lb', kind: 'scale', unit: 'lb', tolerance: 0.1, checkEveryDays: 30 },
  { key: 'logger', name: 'Logger of freezer and chamber', kind: 'thermometer', unit: '°F', tolerance: 1, checkEveryDays: 30 },
  { key: 'pH', name: 'pH meter', kind: 'pH meter', unit: 'pH', tolerance: 0.05, checkEveryDays: 15 },
  { key: 'waterActivity', name: 'Water activity meter', kind: 'other', unit: 'aw', tolerance: 0.003, checkEveryDays: 30 },
] as const;
