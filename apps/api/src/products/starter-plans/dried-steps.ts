import type { SayStarter, StarterStep } from './starter-plan';
import { coldStorageOfMeat, packing, receivingDryGoods, receivingMeat, trimming } from './usual-steps';
import { grinding, stuffing, weighingCuringSalt } from './curing-steps';

/** Steps and hazards (9 CFR 417.2(a)) of a sausage that is never cooked. */

/** Only acid and dryness follow receiving: there is no cook. */
function receivingForDrying(say: SayStarter): StarterStep {
  const receiving = receivingMeat(say, say('fermentation'));
  const hazards = receiving.hazards.map((hazard) => (hazard.likely ? { ...hazard, control: say('killed-by-acid-and-dryness') } : hazard));
  return { ...receiving, hazards: [...hazards, trichinae(say)] };
}

/** Treatments are no longer prescribed (final rule of 31 May 2018). */
const trichinae = (say: SayStarter): StarterStep['hazards'][number] => ({
  kind: 'biological',
  what: say('trichinae-trichinella-spiralis-in-pork'),
  likely: false,
  because: say('the-suppliers-letter-on-file'),
  control: say('letter-of-the-supplier-otherwise'),
});

const fermenting = (say: SayStarter): StarterStep => ({
  key: 'fermenting',
  name: say('fermenting'),
  hazards: [
    {
      kind: 'biological',
      what: say('toxin-of-staphylococcus-aureus-formed'),
      likely: true,
      because: say('a-warm-chamber-suits-it'),
      control: say('by-fermentation'),
    },
    {
      kind: 'biological',
      what: say('survival-of-salmonella-escherichia-coli'),
      likely: true,
      because: say('they-stand-acid-better-than'),
      control: say('fermentation-then-drying-as-validated'),
    },
  ],
});

const drying = (say: SayStarter): StarterStep => ({
  key: 'drying',
  name: say('drying'),
  hazards: [
    {
      kind: 'biological',
      what: say('survival-of-salmonella-e-coli'),
      likely: true,
      because: say('a-dry-rim-and-a'),
      control: say('by-water-activity'),
    },
    {
      kind: 'biological',
      what: say('mould-that-is-not-the'),
      likely: false,
      because: say('humidity-is-led-down-step'),
      control: say('looking-over-care-of-the'),
    },
  ],
});

/** Hands and surfaces bring Listeria onto a product that is dry by now. */
const packingDry = (say: SayStarter): StarterStep => ({
  ...packing(say),
  hazards: packing(say).hazards.map((hazard) =>
    hazard.kind === 'biological' ? { ...hazard, what: say('listeria-monocytogenes-from-surfaces-and-hands') } : hazard,
  ),
});

const storage = (say: SayStarter): StarterStep => ({
  key: 'storage',
  name: say('storage-of-finished-product'),
  hazards: [
    {
      kind: 'biological',
      what: say('growth-of-staphylococcus-aureus-and'),
      likely: false,
      because: say('nothing-leaves-drying-above-the'),
      control: say('water-activity-packages-looked-over'),
    },
  ],
});

const shippingDry = (say: SayStarter): StarterStep => ({
  key: 'shipping',
  name: say('shipping'),
  hazards: [
    {
      kind: 'physical',
      what: say('packages-damaged-on-the-way'),
      likely: false,
      because: say('cases-are-closed-and-the'),
      control: say('looking-over-before-loading'),
    },
  ],
});

export const driedSteps = (say: SayStarter): StarterStep[] => [
  receivingForDrying(say),
  receivingDryGoods(say),
  coldStorageOfMeat(say),
  trimming(say),
  weighingCuringSalt(say, say('besides-nitrite-acid')),
  grinding(say),
  stuffing(say),
  fermenting(say),
  drying(say),
  packingDry(say),
  storage(say),
  shippingDry(say),
];
